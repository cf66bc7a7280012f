package org.fretgloss.annotator.read;

import jakarta.xml.bind.JAXBElement;
import java.util.Optional;
import org.audiveris.proxymusic.Time;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/** Time signatures: plain, additive (3+2/8) and made of several (2/4+3/8). */
final class Meters {

    private static final int MOST = 1024;

    private Meters() {}

    /** Whether the music is free of bars: senza misura. */
    static boolean isFree(Time time) {
        return time.getSenzaMisura() != null;
    }

    /** The meter; several signatures together are counted in the shortest of their units. None if unreadable. */
    static Optional<Meter> read(Time time) {
        Fraction wholeNotes = Fraction.ZERO;
        int shortest = 1;
        int beats = 0;
        for (JAXBElement<String> element : time.getTimeSignature()) {
            int number = sum(element.getValue());
            if (number < 1) {
                return Optional.empty();
            }
            if (element.getName().getLocalPart().equals("beats")) {
                beats = number;
            } else {
                wholeNotes = wholeNotes.plus(Fraction.of(beats, number));
                shortest = Math.max(shortest, number);
            }
        }
        Fraction count = wholeNotes.times(shortest);
        return count.isPositive() && count.isWhole()
                ? Optional.of(new Meter((int) count.numerator(), shortest))
                : Optional.empty();
    }

    /** A time signature as it is written: "3+2/8". */
    static String written(Time time) {
        StringBuilder text = new StringBuilder();
        for (JAXBElement<String> element : time.getTimeSignature()) {
            boolean isUnit = element.getName().getLocalPart().equals("beat-type");
            text.append(isUnit ? "/" : text.isEmpty() ? "" : "+")
                    .append(element.getValue().strip());
        }
        return text.toString();
    }

    /** "3+2" gives 5; 0 if it is no sum of believable numbers. */
    private static int sum(String terms) {
        int sum = 0;
        for (String term : terms.split("\\+", -1)) {
            String number = term.strip();
            if (!number.matches("\\d{1,4}") || sum > MOST) {
                return 0;
            }
            sum += Integer.parseInt(number);
        }
        return sum > MOST ? 0 : sum;
    }
}
