package org.fretgloss.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.UnknownNameException;

/**
 * The blues forms that can be asked for by name, as chord charts in Roman numerals.
 *
 * <p>Every chord of a blues is a dominant seventh, but for the minor form's i and iv and the jazz form's II (common
 * practice, no source). Where a form's bars are published its source stands beside it.
 */
public enum BluesForm {
    /** Sibelius Academy, http://www3.siba.fi/afroimpro/en/blues_chord_progression (its V IV I I ending). */
    TWELVE_BAR("I7 | I7 | I7 | I7 | IV7 | IV7 | I7 | I7 | V7 | IV7 | I7 | I7"),

    /** http://playjazz.blog.co.uk/2009/11/02/quick-tips-jazz-blues-7290072/ (which turns around on V in bar 12). */
    QUICK_CHANGE("I7 | IV7 | I7 | I7 | IV7 | IV7 | I7 | I7 | V7 | IV7 | I7 | I7"),

    /** https://www.torvund.net/guitar/index.php?page=prog&prid=60. */
    EIGHT_BAR("I7 | V7 | IV7 | IV7 | I7 | V7 | I7 | V7"),

    /** Common practice, no source. */
    MINOR_TWELVE_BAR("Im7 | Im7 | Im7 | Im7 | IVm7 | IVm7 | Im7 | Im7 | ♭VI7 | V7 | Im7 | Im7"),

    /** http://playjazz.blog.co.uk/2009/11/02/quick-tips-jazz-blues-7290072/. */
    JAZZ_TWELVE_BAR("I7 | IV7 | I7 | I7 | IV7 | IV7 | I7 | VI7 | IIm7 | V7 | I7 VI7 | IIm7 V7");

    private static final Pattern NUMERAL = Pattern.compile("(♭?)([IV]+)");
    private static final List<String> NUMERALS = List.of("I", "II", "III", "IV", "V", "VI", "VII");

    private final String chart;

    BluesForm(String chart) {
        this.chart = chart;
    }

    /**
     * The form of that name, whatever its capitals: "twelve-bar".
     *
     * @throws UnknownNameException if there is no such form
     */
    public static BluesForm named(String name) {
        return Arrays.stream(values())
                .filter(form -> form.toString().equals(name.trim().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new UnknownNameException("a form", name, names()));
    }

    /** The names there are. */
    public static List<String> names() {
        return Arrays.stream(values()).map(BluesForm::toString).toList();
    }

    /** The form's chords in a key, spelled against it. */
    public Progression in(PitchClass key) {
        String chords = NUMERAL.matcher(chart).replaceAll(numeral -> root(numeral, key));
        return new Progression(toString(), Optional.of(key), ChordChart.parse(chords));
    }

    /** A lead sheet spells no root with a double flat: ♭VI of D♭ is A. */
    private static String root(MatchResult numeral, PitchClass key) {
        int number = NUMERALS.indexOf(numeral.group(2)) + 1;
        PitchClass root = key.plus(Degree.parse(numeral.group(1) + number));
        boolean plain = Math.abs(root.alteration()) <= 1;
        return (plain ? root : PitchClass.usual(root.chroma())).toString();
    }

    /** "twelve-bar", as it is asked for. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
