package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.fingering.Fingering;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Numeral;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Glyphs;

/**
 * What a solo means, computed once and shared by all rules. Rules ask it and never compute the same again.
 *
 * @param fingering the solo itself, with string and fret inferred where the score has none
 * @param homes where it is at home
 * @param harmony the chord of each moment
 * @param form the progression laid over it, where the user gave one
 * @param boxes the boxes it moves through
 * @param phrasing its phrases
 * @param silences every stretch between two notes in which nothing sounds, in order
 * @param climax where it builds to; none in a solo under eight bars
 */
public record Analysis(
        Fingering fingering,
        Homes homes,
        Harmony harmony,
        Optional<Form> form,
        BoxPath boxes,
        Phrasing phrasing,
        List<Silence> silences,
        Optional<Climax> climax) {

    public Analysis {
        silences = List.copyOf(silences);
    }

    /**
     * Works everything out.
     *
     * @param solo the solo
     * @param given what the user says about it
     * @throws IllegalArgumentException if the user names a bar that the solo does not have
     */
    public static Analysis of(Solo solo, Given given) {
        return of(solo, given, new Accompaniment(List.of()));
    }

    /**
     * Works everything out, with chords inferred from what another part plays where neither the user nor the score names
     * any.
     *
     * @param solo the solo
     * @param given what the user says about it
     * @param accompaniment what another part plays under it, on the same time line
     * @throws IllegalArgumentException if the user names a bar that the solo does not have
     */
    public static Analysis of(Solo solo, Given given, Accompaniment accompaniment) {
        Phrasing phrasing = Phrasing.of(solo, Silences.of(solo));
        Optional<Form> form =
                given.progression().map(progression -> FormFinder.find(solo, progression, given.formStart()));
        Harmony named = form.map(laid -> FormHarmony.of(solo, laid)).orElseGet(() -> ScoreHarmony.of(solo));
        Harmony harmony = named.isKnown() ? named : accompaniment.infer(solo.bars());
        Passage whole = Passage.whole(solo, phrasing, harmony, form);
        Homes homes = given.home()
                .map(stated -> Homes.of(HomeFinder.stated(whole, stated)))
                .orElseGet(() -> SectionFinder.find(solo, whole));
        return of(LikelyFingering.of(solo, homes), homes, harmony, form);
    }

    private static Analysis of(Fingering fingering, Homes homes, Harmony harmony, Optional<Form> form) {
        Solo solo = fingering.solo();
        List<Silence> silences = Silences.of(solo);
        Phrasing phrasing = Phrasing.of(solo, silences);
        return new Analysis(
                fingering,
                homes,
                harmony,
                form,
                BoxFinder.find(solo, homes, phrasing),
                phrasing,
                silences,
                Build.climax(solo));
    }

    /** The solo, with the places that were inferred; its notes are those that every answer speaks of. */
    public Solo solo() {
        return fingering.solo();
    }

    /** Whether the score does not say where a note is played, and the analysis does. */
    public boolean isInferred(Note note) {
        return fingering.isInferred(note);
    }

    /** The notes that no string reaches and the score puts nowhere. */
    public List<Note> unplayable() {
        return solo().notes().stream()
                .filter(note -> note.at().isEmpty() && !note.isDead())
                .toList();
    }

    /** How sure a note's place is: 1 where the score tells it, or where there is none to be unsure of. */
    public double surenessOf(Note note) {
        return fingering.sureness(note).orElse(1);
    }

    /**
     * The same without inferred places: what proof-reading looks at, which doubts nothing that the score does not say.
     */
    public Analysis asWritten() {
        return fingering.inferred().isEmpty()
                ? this
                : of(Fingering.asWritten(fingering.written()), homes, harmony, form);
    }

    /**
     * The same under the home that it would have if one note were not there: a slip must not make the scale that excuses it.
     * Tonic and colour must stay, and with them the boxes.
     *
     * @return none where the home does not hang on the note, was stated by the user, or is not the only one
     */
    public Optional<Analysis> asIfUnheard(Note note) {
        boolean isFound = homes.sections().size() == 1 && home().runnerUp().isPresent();
        return isFound
                ? Optional.of(HomeFinder.find(
                                Passage.whole(solo(), phrasing, harmony, form).without(note)))
                        .filter(other -> isSmaller(other.scale(), home().scale()))
                        .map(other -> new Analysis(
                                fingering, Homes.of(other), harmony, form, boxes, phrasing, silences, climax))
                : Optional.empty();
    }

    private static boolean isSmaller(HomeScale one, HomeScale other) {
        return one.tonic().chroma() == other.tonic().chroma()
                && one.scale().hasMajorThird() == other.scale().hasMajorThird()
                && one.scale().degrees().size() < other.scale().degrees().size()
                && one.scale().degrees().stream()
                        .allMatch(degree -> other.scale().contains(degree.chroma()));
    }

    /** The home that the solo begins in, and mostly the only one. */
    public Home home() {
        return homes.first();
    }

    /** The home in force at a note. */
    public Home homeAt(Note note) {
        return homes.at(note);
    }

    /** The chord of the moment at which a note is struck. */
    public Optional<ChordSymbol> chordAt(Note note) {
        return harmony.chordAt(note.onset());
    }

    /** The tone of the chord of the moment that a note is heard as, its bend's peak counted. */
    public Optional<Degree> chordToneOf(Note note) {
        return chordAt(note).flatMap(chord -> chord.degreeOf(Math.floorMod(note.heardMidi(), 12)));
    }

    /** The degree that a note is heard as against the root of the chord of the moment, whether or not it is a tone of it. */
    public Optional<Degree> chordDegreeOf(Note note) {
        return chordAt(note).map(chord -> chord.degreeAgainstRoot(Math.floorMod(note.heardMidi(), 12)));
    }

    /** Whether a note is heard in the home scale or in the chord of the moment. */
    public boolean isInside(Note note) {
        return homeAt(note).scale().contains(note.heardMidi())
                || chordToneOf(note).isPresent();
    }

    /** The degree that a note is heard as against the home tonic, its bend's peak counted. */
    public Degree degreeOf(Note note) {
        return homeAt(note).scale().degreeOf(note.heardMidi());
    }

    /** What a note is heard as, spelled as the home in force spells it. */
    public Pitch spell(Note note) {
        return homeAt(note).spell(note.heardMidi());
    }

    /** The phrases in order. */
    public List<Phrase> phrases() {
        return phrasing.phrases();
    }

    /** Whether the note opens a phrase. */
    public boolean startsPhrase(Note note) {
        return phrasing.startsAt(note);
    }

    /** Where a note stands, in words: "bar 5 beat 3½", with a form "bar 7 (chorus 1, bar 5, IV) beat 3½". */
    public String placeOf(Note note) {
        return "bar " + note.bar().number()
                + form.map(laid -> inForm(note, laid)).orElse("") + " beat " + Glyphs.of(note.beat());
    }

    private String inForm(Note note, Form laid) {
        Form.Place place = laid.placeOf(note.bar());
        String numeral = chordAt(note)
                .map(chord -> ", " + Numeral.of(chord, homeAt(note).scale().tonic()))
                .orElse("");
        String chorus = place.chorus() < 1 ? "lead-in" : "chorus " + place.chorus();
        return " (" + chorus + ", bar " + place.bar() + numeral + ")";
    }
}
