package org.fretgloss.annotator.read;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Metronome;
import org.audiveris.proxymusic.Sound;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Tempo;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;

/** The tempos of a score; they hold for all parts, whichever they stand over. */
final class Tempos {

    /** Quarter notes in a minute. */
    static final int FASTEST = 10_000;

    private final List<Bar> bars;
    private final Notices notices;
    private final TreeMap<Fraction, Double> found = new TreeMap<>();

    private Tempos(List<Bar> bars, Notices notices) {
        this.bars = bars;
        this.notices = notices;
    }

    /** The tempos in order of onset. Where several stand at one moment, the first in the document counts. */
    static List<Tempo> read(List<Timeline> parts, List<Bar> bars, Notices notices) {
        Tempos tempos = new Tempos(bars, notices);
        for (Timeline part : parts) {
            part.directions().forEach(placed -> tempos.take(placed, tempos.ofDirection(placed)));
            part.sounds().forEach(placed -> tempos.take(placed, ofSound(placed.item())));
        }
        return tempos.found.entrySet().stream()
                .map(entry -> new Tempo(entry.getKey(), entry.getValue()))
                .toList();
    }

    private void take(Placed<?> placed, OptionalDouble tempo) {
        if (tempo.isPresent() && placed.bar() < bars.size()) {
            Fraction onset = bars.get(placed.bar()).start().plus(placed.at()).max(Fraction.ZERO);
            found.putIfAbsent(onset, tempo.getAsDouble());
        }
    }

    /** What is played back, else what is printed. */
    private OptionalDouble ofDirection(Placed<Direction> placed) {
        Direction direction = placed.item();
        OptionalDouble played = ofSound(direction.getSound());
        return played.isPresent()
                ? played
                : direction.getDirectionType().stream()
                        .map(DirectionType::getMetronome)
                        .flatMap(Stream::ofNullable)
                        .map(metronome -> ofMetronome(metronome, placed.bar()))
                        .filter(OptionalDouble::isPresent)
                        .findFirst()
                        .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble ofSound(@Nullable Sound sound) {
        return sound == null ? OptionalDouble.empty() : perMinute(sound.getTempo());
    }

    private OptionalDouble ofMetronome(Metronome metronome, int bar) {
        if (metronome.getPerMinute() == null || metronome.getPerMinute().getValue() == null) {
            return OptionalDouble.empty();
        }
        Optional<Fraction> unit = Lengths.ofType(
                metronome.getBeatUnit(), metronome.getBeatUnitDot().size());
        String number = metronome.getPerMinute().getValue().strip();
        if (unit.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble tempo = number.matches("\\d{1,5}(\\.\\d{1,6})?")
                ? perMinute(new BigDecimal(number)
                        .multiply(BigDecimal.valueOf(unit.get().toDouble())))
                : OptionalDouble.empty();
        if (tempo.isEmpty() && bar < bars.size()) {
            notices.say(
                    "per-minute",
                    "the tempo " + Notices.quoted(number)
                            + " cannot be read as a number of beats, so it is passed over",
                    bars.get(bar).number());
        }
        return tempo;
    }

    private static OptionalDouble perMinute(@Nullable BigDecimal quarters) {
        double tempo = quarters == null ? 0 : quarters.doubleValue();
        return tempo >= 1 && tempo <= FASTEST ? OptionalDouble.of(tempo) : OptionalDouble.empty();
    }
}
