package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;

/**
 * What each stroke sounds like. Where string and fret stand they say it, and the written pitch only gives the name;
 * elsewhere the written pitch says it, moved by what the staff's other notes show or by what the part declares.
 *
 * <p>A clef with an octave change moves the picture and not the pitch element (MusicXML: the octave of a pitch is 4 from
 * middle C up, under whatever clef), so it is not added. But a part without frets whose clef and transposition
 * both say the octave means one octave, not two: its notes stand where a guitarist reads them.
 */
final class PitchReader {

    private static final int HIGHEST_FRET = 36;
    private static final int OCTAVE = 12;

    private final Tunings tunings;
    private final Staves staves;
    private final PitchOffsets offsets;
    private final Notices notices;

    private PitchReader(Tunings tunings, Staves staves, PitchOffsets offsets, Notices notices) {
        this.tunings = tunings;
        this.staves = staves;
        this.offsets = offsets;
        this.notices = notices;
    }

    /** The strokes' sound, in the order of time; strokes without any are left out. */
    static List<Sounding> read(List<Stroke> strokes, Staves staves, Tunings tunings, Notices notices) {
        PitchOffsets offsets = PitchOffsets.of(strokes, tunings);
        offsets.tell(notices);
        PitchReader reader = new PitchReader(tunings, staves, offsets, notices);
        List<Sounding> sounding = new ArrayList<>();
        strokes.forEach(stroke -> reader.read(stroke).ifPresent(sounding::add));
        sounding.sort(Sounding.IN_TIME);
        return sounding;
    }

    private Optional<Sounding> read(Stroke stroke) {
        Optional<StringFret> place = stroke.place().filter(at -> isOnTheNeck(at, stroke));
        int offset = offsets.of(stroke.staff()).orElseGet(() -> declared(stroke));
        Optional<Pitch> pitch = place.isPresent() && !isWrittenAsHeard(stroke)
                ? place.map(at -> fretted(stroke, at, offset))
                : stroke.first().pitch().map(written -> Spelling.of(written.midi() - offset, written, offset, 0));
        if (pitch.isEmpty()) {
            notices.say("a note without a readable pitch is left out", bar(stroke));
        }
        return pitch.map(sound -> new Sounding(
                stroke,
                sound,
                place.isPresent() ? offset : 0,
                place,
                stroke.marks().bends()));
    }

    /** The offset that the staff declares by its transposition. */
    private int declared(Stroke stroke) {
        int transposition = stroke.first().transposition();
        int octaves = staves.clefOctaves(stroke.staff());
        boolean saidTwice = octaves != 0 && Integer.signum(octaves) == transposition / OCTAVE;
        if (saidTwice) {
            notices.say("clef and transposition both say the octave, which is counted once");
        }
        return saidTwice ? OCTAVE * Integer.signum(octaves) - transposition : -transposition;
    }

    private Pitch fretted(Stroke stroke, StringFret at, int offset) {
        Tuning tuning = tunings.at(stroke.onset());
        Optional<HarmonicTone> harmonic = stroke.marks().harmonic();
        int midi = harmonic.map(tone -> tuning.openMidi(at.string()) + Harmonics.semitones(tone, at.fret()))
                .orElseGet(() -> tuning.midi(at));
        int fifths = stroke.first().bar().key().fifths();
        Optional<Pitch> written = stroke.first().pitch();
        return written.map(pitch -> Spelling.of(midi, pitch, offset, fifths))
                .orElseGet(() -> Spelling.inKey(midi, fifths));
    }

    private static boolean isWrittenAsHeard(Stroke stroke) {
        return stroke.marks()
                        .harmonic()
                        .filter(tone -> tone == HarmonicTone.HEARD)
                        .isPresent()
                && stroke.first().pitch().isPresent();
    }

    private boolean isOnTheNeck(StringFret at, Stroke stroke) {
        Tuning tuning = tunings.at(stroke.onset());
        if (!tuning.hasString(at.string())) {
            notices.say(
                    "string beyond the neck",
                    "string " + at.string() + " is not on an instrument with " + tuning.size()
                            + " strings, so its string and fret are passed over",
                    bar(stroke));
            return false;
        }
        if (at.fret() < 0 || at.fret() > HIGHEST_FRET) {
            String where = at.fret() < 0 ? " lies below the nut" : " is beyond the neck";
            notices.say(
                    "fret" + where, at.fretInWords() + where + ", so its string and fret are passed over", bar(stroke));
            return false;
        }
        return true;
    }

    private static String bar(Stroke stroke) {
        return stroke.first().bar().number();
    }
}
