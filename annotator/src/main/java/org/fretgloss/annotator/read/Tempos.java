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

    private static final double FASTEST = 10_000;

    private final List<Bar> bars;
    private final TreeMap<Fraction, Double> found = new TreeMap<>();

    private Tempos(List<Bar> bars) {
        this.bars = bars;
    }

    /** The tempos in order of onset. Where several stand at one moment, the first in the document counts. */
    static List<Tempo> read(List<Timeline> parts, List<Bar> bars) {
        Tempos tempos = new Tempos(bars);
        for (Timeline part : parts) {
            part.directions().forEach(placed -> tempos.take(placed, ofDirection(placed.item())));
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
    private static OptionalDouble ofDirection(Direction direction) {
        OptionalDouble played = ofSound(direction.getSound());
        return played.isPresent()
                ? played
                : direction.getDirectionType().stream()
                        .map(DirectionType::getMetronome)
                        .flatMap(Stream::ofNullable)
                        .map(Tempos::ofMetronome)
                        .filter(OptionalDouble::isPresent)
                        .findFirst()
                        .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble ofSound(@Nullable Sound sound) {
        return sound == null ? OptionalDouble.empty() : perMinute(sound.getTempo());
    }

    private static OptionalDouble ofMetronome(Metronome metronome) {
        if (metronome.getPerMinute() == null || metronome.getPerMinute().getValue() == null) {
            return OptionalDouble.empty();
        }
        Optional<Fraction> unit = Lengths.ofType(
                metronome.getBeatUnit(), metronome.getBeatUnitDot().size());
        String number = metronome.getPerMinute().getValue().strip();
        if (unit.isEmpty() || !number.matches("\\d{1,5}(\\.\\d{1,6})?")) {
            return OptionalDouble.empty();
        }
        return perMinute(
                new BigDecimal(number).multiply(BigDecimal.valueOf(unit.get().toDouble())));
    }

    private static OptionalDouble perMinute(@Nullable BigDecimal quarters) {
        double tempo = quarters == null ? 0 : quarters.doubleValue();
        return tempo > 0 && tempo <= FASTEST ? OptionalDouble.of(tempo) : OptionalDouble.empty();
    }
}
