package org.fretgloss.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.Progression;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.time.Meter;

/**
 * The lines above the music of an example, name to text.
 *
 * @param lines the headers that stand once
 * @param options the options of the rule
 */
record Headers(Map<String, String> lines, Map<String, String> options) {

    private static final Pattern FORM = Pattern.compile("([a-z-]{3,}) *:(.*)");
    private static final String OPTION = "option";
    private static final List<String> NAMES =
            List.of("home", "chords", "form", "meter", "tuning", "capo", "bars", OPTION);

    static boolean isHeader(String line) {
        return FORM.matcher(line).matches();
    }

    /**
     * Reads header lines.
     *
     * @throws NotationException if a name is unknown or stands twice
     */
    static Headers parse(List<String> texts) {
        Map<String, String> lines = new LinkedHashMap<>();
        Map<String, String> options = new LinkedHashMap<>();
        for (String text : texts) {
            Matcher matcher = FORM.matcher(text);
            if (!matcher.matches() || !NAMES.contains(matcher.group(1))) {
                throw new NotationException("'" + text + "': the headers are " + String.join(", ", NAMES));
            }
            String name = matcher.group(1);
            String value = matcher.group(2).strip();
            if (name.equals(OPTION)) {
                addOption(options, value);
            } else if (lines.put(name, value) != null) {
                throw new NotationException("the header '" + name + "' stands twice");
            }
        }
        return new Headers(lines, options);
    }

    private static void addOption(Map<String, String> options, String text) {
        int sign = text.indexOf('=');
        if (sign < 1) {
            throw new NotationException("'" + text + "' should read name=value");
        }
        options.put(text.substring(0, sign).strip(), text.substring(sign + 1).strip());
    }

    Meter meter() {
        return line("meter").map(MeteredBar::readMeter).orElse(Meter.COMMON);
    }

    Tuning tuning() {
        Tuning tuning = line("tuning").map(Tuning::of).orElse(Tuning.STANDARD);
        return line("capo").map(fret -> tuning.withCapo(readFret(fret))).orElse(tuning);
    }

    /** Whether bars may be shorter or longer than their meter. */
    boolean barsMayDiffer() {
        line("bars").filter(value -> !value.equals("as written")).ifPresent(value -> {
            throw new NotationException("'" + value + "': the only word on bars is 'as written'");
        });
        return line("bars").isPresent();
    }

    private static int readFret(String text) {
        if (!text.matches("\\d{1,2}")) {
            throw new NotationException("'" + text + "' is no fret for a capo");
        }
        return Integer.parseInt(text);
    }

    Optional<HomeScale> home() {
        return line("home").map(HomeScale::parse);
    }

    /**
     * What the headers say about the solo.
     *
     * @param start the number of the bar in which a progression begins
     */
    Given given(String start) {
        Optional<Progression> chords = line("chords").map(Progression::parse);
        Optional<Progression> progression = chords.or(() -> line("form").map(Headers::form));
        return new Given(home(), progression, progression.map(unused -> start));
    }

    private static Progression form(String nameAndKey) {
        int blank = nameAndKey.indexOf(' ');
        if (blank < 0) {
            throw new NotationException("'" + nameAndKey + "' should read NAME KEY, as in twelve-bar A");
        }
        return Progression.form(
                nameAndKey.substring(0, blank),
                PitchClass.parse(nameAndKey.substring(blank + 1).strip()));
    }

    private Optional<String> line(String name) {
        return Optional.ofNullable(lines.get(name));
    }
}
