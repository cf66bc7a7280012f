package org.fretgloss.annotator.read;

import jakarta.xml.bind.JAXBElement;
import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.audiveris.proxymusic.Fret;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Technical;
import org.fretgloss.neck.StringFret;
import org.jspecify.annotations.Nullable;

/** Where a note is played, if its element says so. */
final class PlaceReader {

    private PlaceReader() {}

    /** String and fret; a string that is marked open has fret 0. None unless both are there. */
    static Optional<StringFret> read(Note note) {
        Map<String, Object> marks = note.getNotations().stream()
                .flatMap(notations -> notations.getTiedOrSlurOrTuplet().stream())
                .filter(Technical.class::isInstance)
                .flatMap(item -> ((Technical) item).getUpBowOrDownBowOrHarmonic().stream())
                .filter(element -> element.getValue() != null)
                .collect(Collectors.toMap(
                        element -> element.getName().getLocalPart(), JAXBElement::getValue, (first, second) -> first));
        OptionalInt string = number(marks.get("string"));
        OptionalInt fret = marks.containsKey("open-string") ? OptionalInt.of(0) : number(marks.get("fret"));
        return string.isPresent() && fret.isPresent()
                ? Optional.of(new StringFret(string.getAsInt(), fret.getAsInt()))
                : Optional.empty();
    }

    private static OptionalInt number(@Nullable Object mark) {
        if (mark instanceof Fret fret) {
            return fret.getValue() == null ? OptionalInt.empty() : OptionalInt.of(fret(fret.getValue()));
        }
        return mark instanceof org.audiveris.proxymusic.String string
                ? Numbers.whole(string.getValue())
                : OptionalInt.empty();
    }

    /** However large it is: proof-reading tells where the neck ends. */
    private static int fret(BigInteger number) {
        BigInteger beyond = BigInteger.valueOf(StringFret.FARTHEST + 1);
        return number.min(beyond).max(beyond.negate()).intValueExact();
    }
}
