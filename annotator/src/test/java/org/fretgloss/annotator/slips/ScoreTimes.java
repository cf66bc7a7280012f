package org.fretgloss.annotator.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When things happen in the text of a score, counted without the project's reader, in ticks from the start of the part.
 *
 * @param onsets of each note element
 * @param symbols the chord symbols, in order
 * @param bars the start of each bar of the first part, and the end of the last
 */
record ScoreTimes(List<Long> onsets, List<Symbol> symbols, List<Bar> bars) {

    static final long QUARTER = 5040;

    private static final Pattern ELEMENT = Pattern.compile(
            "<part id|<measure\\b[^>]*number=\"(?<bar>[^\"]*)\"|<divisions>(?<divisions>\\d+)<"
                    + "|<(?<way>note|backup|forward)\\b.*?</\\k<way>>|<harmony\\b.*?</harmony>",
            Pattern.DOTALL);

    private static final Pattern DURATION = Pattern.compile("<duration>(\\d+)</duration>");

    /**
     * A chord symbol.
     *
     * @param at where it stands in the text
     * @param onset in ticks
     */
    record Symbol(MatchResult at, long onset) {}

    /**
     * A bar.
     *
     * @param number as printed
     * @param start in ticks
     */
    record Bar(String number, long start) {}

    static ScoreTimes of(String text) {
        Reading reading = new Reading();
        Matcher matcher = ELEMENT.matcher(text);
        while (matcher.find()) {
            reading.take(matcher);
        }
        return reading.times();
    }

    /** The place of the bar that sounds at a moment; 0 for the first. */
    int barAt(long moment) {
        int place = 0;
        while (place + 2 < bars.size() && bars.get(place + 1).start() <= moment) {
            place++;
        }
        return place;
    }

    private static final class Reading {

        private final List<Long> onsets = new ArrayList<>();
        private final List<Symbol> symbols = new ArrayList<>();
        private final List<Bar> bars = new ArrayList<>();
        private int parts;
        private long divisions = 1;
        private long now;
        private long struck;
        private long barEnd;

        private void take(Matcher element) {
            String text = element.group();
            if (text.startsWith("<part")) {
                close();
                parts++;
                now = 0;
                barEnd = 0;
            } else if (element.group("bar") != null) {
                now = barEnd;
                if (parts == 1) {
                    bars.add(new Bar(element.group("bar"), now));
                }
            } else if (element.group("divisions") != null) {
                divisions = Long.parseLong(element.group("divisions"));
            } else if (text.startsWith("<harmony")) {
                symbols.add(new Symbol(element.toMatchResult(), now));
            } else if (text.startsWith("<backup")) {
                now -= length(text);
            } else if (text.startsWith("<forward")) {
                pass(text);
            } else {
                boolean together = text.contains("<chord/>") || text.contains("<chord />");
                struck = together ? struck : now;
                onsets.add(struck);
                if (!together) {
                    pass(text);
                }
            }
        }

        private void pass(String element) {
            now += length(element);
            barEnd = Math.max(barEnd, now);
        }

        private long length(String element) {
            Matcher duration = DURATION.matcher(element);
            return duration.find() ? QUARTER * Long.parseLong(duration.group(1)) / divisions : 0;
        }

        private void close() {
            if (parts == 1) {
                bars.add(new Bar("", barEnd));
            }
        }

        private ScoreTimes times() {
            close();
            return new ScoreTimes(List.copyOf(onsets), List.copyOf(symbols), List.copyOf(bars));
        }
    }
}
