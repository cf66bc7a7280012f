package org.fretgloss.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/**
 * One note of the notation: {@code h3/7b2:1/2}, or without string and fret {@code hC♯4b2:1/2}.
 *
 * <p>Before the string: {@code h} hammered on, {@code p} pulled off, {@code s} slid to, {@code t} tapped, {@code g} a
 * grace note, {@code x} dead, {@code v} with vibrato, {@code n} a harmonic, {@code w} bent with the bar. {@code 3/7=E♭4}
 * is a note for which the score writes E♭4, {@code 3/7~} one from which a tie leads nowhere, {@code 3/7~3/9} one from
 * which it leads to another place.
 *
 * @param at string and fret, or none where a pitch stands instead
 * @param pitch the sounding pitch, of a note without string and fret
 * @param bend how it is bent, if it is
 * @param attack how it is begun
 * @param techniques what else is written about it
 * @param grace whether it is a grace note
 * @param written the pitch that the score writes for it, where that is not what the fret sounds
 * @param tied whether a tie begins that leads nowhere
 * @param tiedTo where a tie leads, if to another place
 * @param duration quarter notes, where the note says it itself
 */
record Stroke(
        Optional<StringFret> at,
        Optional<Pitch> pitch,
        Optional<Bend> bend,
        Attack attack,
        Set<Technique> techniques,
        boolean grace,
        Optional<Pitch> written,
        boolean tied,
        Optional<StringFret> tiedTo,
        Optional<Fraction> duration) {

    private static final Map<Character, Attack> ATTACKS =
            Map.of('h', Attack.HAMMERED_ON, 'p', Attack.PULLED_OFF, 's', Attack.SLID, 't', Attack.TAPPED);

    private static final Map<Character, Technique> TECHNIQUES =
            Map.of('x', Technique.DEAD, 'v', Technique.VIBRATO, 'n', Technique.HARMONIC, 'w', Technique.WITH_BAR);

    private static final Pattern FORM = Pattern.compile(
            "(?<prefixes>[hpstgxvnw]*)"
                    + "(?:(?<string>\\d{1,2})/(?<fret>\\d{1,2})|(?<pitch>[A-G][♯♭#b]*\\d))"
                    + "(?<tie>~(?:(?<tieString>\\d{1,2})/(?<tieFret>\\d{1,2}))?)?(?<bend>p?b[^:=]*)?(?:=(?<written>[A-G][♯♭#b]*\\d))?(?::(?<duration>.+))?");

    /**
     * Reads one note.
     *
     * @throws NotationException if the text is none
     */
    static Stroke parse(String text) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw new NotationException(
                    "'" + text + "' is no note: write STRING/FRET as in 3/7b2:1/2, or a pitch as in C♯4:1");
        }
        String prefixes = matcher.group("prefixes");
        return new Stroke(
                place(matcher, "string", "fret"),
                Optional.ofNullable(matcher.group("pitch")).map(Pitch::parse),
                Optional.ofNullable(matcher.group("bend")).map(BendText::parse),
                attack(prefixes),
                techniques(prefixes),
                prefixes.indexOf('g') >= 0,
                Optional.ofNullable(matcher.group("written")).map(Pitch::parse),
                "~".equals(matcher.group("tie")),
                place(matcher, "tieString", "tieFret"),
                Optional.ofNullable(matcher.group("duration")).map(Event::readDuration));
    }

    private static Optional<StringFret> place(Matcher matcher, String string, String fret) {
        return Optional.ofNullable(matcher.group(string))
                .map(number -> new StringFret(Integer.parseInt(number), Integer.parseInt(matcher.group(fret))));
    }

    private static Attack attack(String prefixes) {
        List<Attack> attacks =
                letters(prefixes).filter(ATTACKS::containsKey).map(ATTACKS::get).toList();
        if (attacks.size() > 1) {
            throw new NotationException("a note is begun in one way, and '" + prefixes + "' names several");
        }
        return attacks.isEmpty() ? Attack.PICKED : attacks.get(0);
    }

    private static Set<Technique> techniques(String prefixes) {
        return letters(prefixes)
                .filter(TECHNIQUES::containsKey)
                .map(TECHNIQUES::get)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Stream<Character> letters(String prefixes) {
        return prefixes.chars().mapToObj(letter -> (char) letter);
    }
}
