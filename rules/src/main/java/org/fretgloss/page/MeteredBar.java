package org.fretgloss.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/**
 * A bar of the notation.
 *
 * @param events in order
 * @param meter the meter in force
 */
record MeteredBar(List<Event> events, Meter meter) {

    /** A bar may begin with a new meter: {@code (3/4)}. */
    private static final Pattern METER = Pattern.compile("\\((.*)\\)");

    MeteredBar {
        events = List.copyOf(events);
    }

    /**
     * Reads bars parted by {@code |}; a line's end is a blank.
     *
     * @throws NotationException if anything else stands there
     */
    static List<MeteredBar> parse(String music, Meter first) {
        String inner = music.strip().replaceAll("\\|\\s*\\n\\s*\\|", "|").replaceAll("^\\||\\|$", "");
        List<MeteredBar> bars = new ArrayList<>();
        Meter meter = first;
        Optional<Fraction> duration = Optional.empty();
        for (String text : inner.split("\\|", -1)) {
            List<String> tokens = List.of(text.strip().split("\\s+"));
            Matcher change = METER.matcher(tokens.get(0));
            if (change.matches()) {
                meter = readMeter(change.group(1));
                tokens = tokens.subList(1, tokens.size());
            }
            List<Event> events = new ArrayList<>();
            for (String token : tokens) {
                Event event = Event.parse(token, duration);
                events.add(event);
                if (event.duration().isPositive()) {
                    duration = Optional.of(event.duration());
                }
            }
            bars.add(new MeteredBar(events, meter));
        }
        return bars;
    }

    /**
     * Reads "4/4".
     *
     * @throws NotationException if the text is no meter
     */
    static Meter readMeter(String text) {
        String[] numbers = text.strip().split("/", -1);
        try {
            if (numbers.length == 2) {
                return new Meter(Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]));
            }
        } catch (IllegalArgumentException e) {
            throw new NotationException("'" + text + "' is no meter: write 4/4 or 12/8", e);
        }
        throw new NotationException("'" + text + "' is no meter: write 4/4 or 12/8");
    }

    /** Quarter notes that the events fill. */
    Fraction filled() {
        return events.stream().map(Event::duration).reduce(Fraction.ZERO, Fraction::plus);
    }
}
