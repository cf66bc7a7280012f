package org.fretgloss.annotator.write;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fretgloss.annotator.file.LyricSite;
import org.fretgloss.annotator.file.NoteSite;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.file.Splice;
import org.fretgloss.annotator.file.Splicer;
import org.fretgloss.rule.Line;

/**
 * Writes our lines into a score: each text as one lyric element, and one field in the identification that says what
 * they are. Both are inserted into the text as it stands, in the file's own line ends and indentation; nothing else
 * changes, and {@link Stripper} takes them out again.
 */
public final class ScoreWriter {

    private ScoreWriter() {}

    /**
     * The score's text with our lines in it. Without texts it is the text as it is.
     *
     * @param scan of a text that holds nothing of ours
     * @param texts what to write, under notes of one part, one for each line and note
     * @param stamp who writes, and how
     * @param charset the characters that may be written as they are; all others become character references
     * @throws ScoreException if there are more lines than lyric numbers left in the part
     * @throws IllegalArgumentException if the text is annotated already, or a note is an empty tag
     */
    public static String annotate(ScoreScan scan, List<LineText> texts, Stamp stamp, Charset charset)
            throws ScoreException {
        if (scan.isAnnotated()) {
            throw new IllegalArgumentException("old lines are stripped before new ones are written");
        }
        if (texts.isEmpty()) {
            return scan.text();
        }
        Map<Line, Integer> numbers = LyricNumbers.assign(scan, partOf(texts, scan), linesOf(texts));
        Layout layout = Layout.of(scan, charset);
        List<Splice> splices = new ArrayList<>(lyrics(scan, layout, texts, numbers));
        splices.addAll(FieldWriter.splices(
                scan,
                layout,
                (inserted, opened) -> new FieldContent(
                        stamp.version(), names(numbers), stamp.settings(), inserted, opened, digest(texts))));
        return Splicer.apply(scan.text(), splices);
    }

    private static String partOf(List<LineText> texts, ScoreScan scan) {
        return scan.note(texts.get(0).element()).part();
    }

    private static List<Line> linesOf(List<LineText> texts) {
        return texts.stream().map(LineText::line).distinct().sorted().toList();
    }

    private static Map<Integer, String> names(Map<Line, Integer> numbers) {
        Map<Integer, String> names = new LinkedHashMap<>();
        numbers.forEach((line, number) -> names.put(number, line.toString()));
        return names;
    }

    private static List<Splice> lyrics(
            ScoreScan scan, Layout layout, List<LineText> texts, Map<Line, Integer> numbers) {
        return byElement(texts).entrySet().stream()
                .map(entry -> lyrics(scan, layout, scan.note(entry.getKey()), entry.getValue(), numbers))
                .toList();
    }

    private static Splice lyrics(
            ScoreScan scan, Layout layout, NoteSite note, List<LineText> texts, Map<Line, Integer> numbers) {
        if (note.site().isEmptyTag()) {
            throw new IllegalArgumentException("note " + note.ordinal() + " is empty and bears no lyric");
        }
        Spacing spacing = Spacing.inside(scan.text(), note.site());
        return Splice.insert(
                note.lyricOffset(),
                texts.stream()
                        .map(text -> layout.markup(lyric(text, numbers), spacing))
                        .collect(Collectors.joining()));
    }

    private static NewElement lyric(LineText text, Map<Line, Integer> numbers) {
        return NewElement.of("lyric", NewElement.ofText("syllabic", "single"), NewElement.ofText("text", text.text()))
                .with("number", String.valueOf(numbers.get(text.line())))
                .with("name", LyricSite.OUR_NAME + text.line());
    }

    private static String digest(List<LineText> texts) {
        return TextDigest.ofTexts(
                byElement(texts).values().stream().flatMap(List::stream).toList());
    }

    /** The texts in document order, under one note in the order of lines. */
    private static Map<Integer, List<LineText>> byElement(List<LineText> texts) {
        return texts.stream()
                .sorted(Comparator.comparing(LineText::line))
                .collect(Collectors.groupingBy(LineText::element, TreeMap::new, Collectors.toList()));
    }
}
