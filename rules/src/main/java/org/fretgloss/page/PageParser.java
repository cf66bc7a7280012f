package org.fretgloss.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/** Takes a page apart line by line: title, sections, and the fenced blocks that are examples. */
final class PageParser {

    private static final String FENCE = "```";
    private static final String TITLE = "# ";
    private static final String SECTION = "## ";
    private static final String SUMMARY = "";

    private final String text;
    private final Map<String, StringJoiner> sections = new LinkedHashMap<>();
    private final List<PageExample> examples = new ArrayList<>();
    private String title = "";
    private String section = SUMMARY;

    PageParser(String text) {
        this.text = text;
    }

    RulePage parse() {
        List<String> lines = text.lines().toList();
        int next = 0;
        while (next < lines.size()) {
            String line = lines.get(next);
            if (line.startsWith(FENCE)) {
                next = takeBlock(lines, next);
            } else {
                takeLine(line);
                next++;
            }
        }
        Map<String, String> bodies = new LinkedHashMap<>();
        sections.forEach((name, body) -> bodies.put(name, body.toString().strip()));
        String summary = bodies.containsKey(SUMMARY) ? bodies.remove(SUMMARY) : "";
        return new RulePage(text, title, summary, bodies, examples);
    }

    private void takeLine(String line) {
        if (line.startsWith(SECTION)) {
            section = line.substring(SECTION.length()).strip();
            body();
        } else if (line.startsWith(TITLE) && title.isEmpty()) {
            title = line.substring(TITLE.length()).strip();
        } else {
            body().add(line);
        }
    }

    /** Takes a fenced block and gives the line after it; a block that is never closed ends with the page. */
    private int takeBlock(List<String> lines, int open) {
        String kind = lines.get(open).substring(FENCE.length()).strip();
        int close = open + 1;
        while (close < lines.size() && !lines.get(close).startsWith(FENCE)) {
            close++;
        }
        List<String> block = lines.subList(open + 1, close);
        if (kind.equals("fires") || kind.equals("silent")) {
            examples.add(new PageExample(open + 1, kind.equals("fires"), String.join("\n", block)));
        }
        lines.subList(open, Math.min(close + 1, lines.size())).forEach(body()::add);
        return close + 1;
    }

    private StringJoiner body() {
        return sections.computeIfAbsent(section, unused -> new StringJoiner("\n"));
    }
}
