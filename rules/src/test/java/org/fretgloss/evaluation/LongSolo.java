package org.fretgloss.evaluation;

import java.util.List;
import java.util.StringJoiner;
import org.fretgloss.neck.StringFret;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.Seeded;
import org.fretgloss.solo.Solo;

/**
 * Made-up lead lines of any length: a walk through the boxes in eighths and sixteenths, with bends, slides, grace notes
 * and double stops, over dominant chords whose key moves every {@value #BARS_IN_A_KEY} bars.
 */
final class LongSolo {

    private static final int BARS_IN_A_KEY = 24;

    /** A walk in any key's box 1, from its lowest fret: string and distance. */
    private static final List<StringFret> BOX = List.of(
            new StringFret(6, 0),
            new StringFret(6, 3),
            new StringFret(5, 0),
            new StringFret(5, 2),
            new StringFret(4, 0),
            new StringFret(4, 2),
            new StringFret(3, 0),
            new StringFret(3, 2),
            new StringFret(2, 0),
            new StringFret(2, 3),
            new StringFret(1, 0),
            new StringFret(1, 3));

    /** The keys in turn: their chords, and the fret of box 1. */
    private record Key(int fret, List<String> chords) {}

    private static final List<Key> KEYS = List.of(
            new Key(5, List.of("A7", "D7", "A7", "E7")),
            new Key(8, List.of("C7", "F7", "C7", "G7")),
            new Key(3, List.of("G7", "C7", "G7", "D7")));

    private final Seeded any = new Seeded(500);
    private final boolean rests;
    private int place = BOX.size() / 2;

    private LongSolo(boolean rests) {
        this.rests = rests;
    }

    /**
     * A solo of about so many notes.
     *
     * @param rests whether it ever takes a breath
     */
    static Solo of(int notes, boolean rests) {
        return new LongSolo(rests).solo(notes);
    }

    private Solo solo(int notes) {
        StringJoiner symbols = new StringJoiner(" | ");
        StringJoiner bars = new StringJoiner(" | ", "| ", " |");
        int written = 0;
        for (int bar = 0; written < notes; bar++) {
            Key key = KEYS.get(bar / BARS_IN_A_KEY % KEYS.size());
            symbols.add(key.chords().get(bar % 4));
            boolean breathes = rests && bar % 4 == 3;
            int count = Math.min(notes - written, breathes ? 6 : 10);
            bars.add(bar(key, count, breathes));
            written += count;
        }
        return SoloText.parse("bars: as written\nsymbols: " + symbols + "\n" + bars)
                .solo();
    }

    /** Up to six eighths, then sixteenths or a rest of a beat. */
    private String bar(Key key, int count, boolean breathes) {
        StringJoiner notes = new StringJoiner(" ");
        for (int i = 0; i < count; i++) {
            notes.add(note(key) + (i < 6 ? ":1/2" : ":1/4"));
        }
        return notes + (breathes ? " r:1" : "");
    }

    private String note(Key key) {
        place = Math.max(0, Math.min(BOX.size() - 1, place + any.between(-2, 2)));
        StringFret at = BOX.get(place);
        int fret = key.fret() + at.fret();
        if (any.once(12) && at.string() == 3) {
            return "3/" + fret + "b2";
        }
        if (any.once(20) && at.string() == 2) {
            return "2/" + fret + "+1/" + key.fret();
        }
        return (any.once(16) ? "s" : "") + at.string() + "/" + (any.once(25) ? fret + 1 : fret);
    }
}
