package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
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
 * @param solo the solo itself
 * @param home where it is at home
 * @param harmony the chord of each moment
 * @param form the progression laid over it, where the user gave one
 * @param boxes the boxes it moves through
 * @param phrasing where phrases begin
 * @param silences every stretch between two notes in which nothing sounds, in order
 * @param climax where it builds to; none in a solo under eight bars
 */
public record Analysis(
        Solo solo,
        Home home,
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
        List<Silence> silences = Silences.of(solo);
        Phrasing phrasing = Phrasing.of(solo, silences);
        Optional<Form> form =
                given.progression().map(progression -> FormFinder.find(solo, progression, given.formStart()));
        Harmony harmony = form.map(laid -> FormHarmony.of(solo, laid)).orElseGet(() -> ScoreHarmony.of(solo));
        HomeFinder homes = new HomeFinder(solo, phrasing, harmony, form);
        Home home = given.home().map(homes::stated).orElseGet(homes::find);
        return new Analysis(
                solo,
                home,
                harmony,
                form,
                BoxFinder.find(solo, home.scale(), silences),
                phrasing,
                silences,
                Build.climax(solo));
    }

    /** The chord of the moment at which a note is struck. */
    public Optional<ChordSymbol> chordAt(Note note) {
        return harmony.chordAt(note.onset());
    }

    /** The tone of the chord of the moment that a note is heard as, its bend's peak counted. */
    public Optional<Degree> chordToneOf(Note note) {
        return chordAt(note).flatMap(chord -> chord.degreeOf(Math.floorMod(note.heardMidi(), 12)));
    }

    /** Whether a note is heard in the home scale or in the chord of the moment. */
    public boolean isInside(Note note) {
        return home.scale().contains(note.heardMidi()) || chordToneOf(note).isPresent();
    }

    /** The degree of a sounding note against the home tonic. */
    public Degree degreeOf(int midi) {
        return home.scale().degreeOf(midi);
    }

    /** A sounding note as the home spells it. */
    public Pitch spell(int midi) {
        return home.spell(midi);
    }

    /** Whether the note opens a phrase: the first note, or one after a silence of a beat or more. */
    public boolean startsPhrase(Note note) {
        return phrasing.startsAt(note);
    }

    /** Whether the solo is a blues: its I sounds as a dominant seventh, or a blues form is in force. */
    public boolean isBlues() {
        int tonic = home.scale().tonic().chroma();
        boolean dominantTonic = harmony.spans().stream()
                .flatMap(span -> span.chord().stream())
                .anyMatch(chord -> chord.root().chroma() == tonic && chord.isDominant());
        return dominantTonic || form.flatMap(laid -> laid.progression().key()).isPresent();
    }

    /** Where a note stands, in words: "bar 5 beat 3½", with a form "bar 7 (chorus 1, bar 5, IV) beat 3½". */
    public String placeOf(Note note) {
        return "bar " + note.bar().number()
                + form.map(laid -> inForm(note, laid)).orElse("") + " beat " + Glyphs.of(note.beat());
    }

    private String inForm(Note note, Form laid) {
        Form.Place place = laid.placeOf(note.bar());
        String numeral = chordAt(note)
                .map(chord -> ", " + Numeral.of(chord, home.scale().tonic()))
                .orElse("");
        return " (chorus " + place.chorus() + ", bar " + place.bar() + numeral + ")";
    }
}
