package org.fretgloss.page;

import java.util.ArrayList;
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
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.ChordMark;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Tempo;
import org.fretgloss.time.Fraction;
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
            List.of("home", "chords", "form", "meter", "tuning", "capo", "bars", "title", "tempo", "symbols", OPTION);

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

    /** The solo under this heading: its title, its tempo, and the chord symbols of its first bars. */
    Solo over(Solo music) {
        return new Solo(
                line("title").orElse(music.title()),
                music.part(),
                music.tuning(),
                music.tuningIsWritten(),
                music.bars(),
                music.notes(),
                line("symbols").map(chart -> symbols(chart, music)).orElse(music.chords()),
                line("tempo").map(Headers::tempo).map(List::of).orElse(music.tempos()));
    }

    private static Tempo tempo(String quartersPerMinute) {
        if (!quartersPerMinute.matches("[1-9]\\d{0,2}")) {
            throw new NotationException("'" + quartersPerMinute + "' is no tempo in quarter notes a minute");
        }
        return new Tempo(Fraction.ZERO, Integer.parseInt(quartersPerMinute));
    }

    /** Bar by bar from the first full bar on; they end where they end. */
    private static List<ChordMark> symbols(String chart, Solo music) {
        List<List<Optional<ChordSymbol>>> chords = Progression.parse(chart).bars();
        List<Bar> bars = music.bars().stream().filter(bar -> !bar.isPickUp()).toList();
        List<ChordMark> marks = new ArrayList<>();
        for (int i = 0; i < Math.min(chords.size(), bars.size()); i++) {
            Bar bar = bars.get(i);
            Fraction share = bar.length().dividedBy(Fraction.of(chords.get(i).size()));
            for (int place = 0; place < chords.get(i).size(); place++) {
                marks.add(new ChordMark(
                        bar.start().plus(share.times(Fraction.of(place))),
                        chords.get(i).get(place)));
            }
        }
        return marks;
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
