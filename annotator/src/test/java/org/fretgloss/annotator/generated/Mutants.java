package org.fretgloss.annotator.generated;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.generated.Mutant.Origin;
import org.fretgloss.annotator.generated.Mutator.Harm;
import org.fretgloss.annotator.generated.Packing.Archive;

/** Damaged scores by the thousand, each from a seed: made-up ones and the fixtures, in all encodings and containers. */
public final class Mutants {

    /** A fixture is longer than the others, so it comes less often. */
    private static final int FIXTURE_EVERY = 10;

    private static final List<Harm> HARMS = List.of(Harm.values());
    private static final List<Archive> ARCHIVES = Stream.of(Archive.values())
            .filter(archive -> archive != Archive.PLAIN)
            .toList();
    private static final Packing USUAL = new Packing("UTF-8", StandardCharsets.UTF_8, false, Archive.PLAIN);

    private final List<String> fixtures;
    private final List<String> readingFixtures;

    private Mutants(List<String> fixtures, List<String> readingFixtures) {
        this.fixtures = fixtures;
        this.readingFixtures = readingFixtures;
    }

    /**
     * Mutants of made-up scores and of the scores in a folder.
     *
     * @param folder holds a folder {@code reading} besides others
     */
    public static Mutants with(Path folder) throws IOException {
        List<String> fixtures = new ArrayList<>();
        List<String> readingFixtures = new ArrayList<>();
        for (Path score : scores(folder)) {
            try {
                (score.startsWith(folder.resolve("reading")) ? readingFixtures : fixtures)
                        .add(ScoreFile.read(score).text());
            } catch (ScoreException e) {
                // Some reading fixtures hold no text that can be harmed.
            }
        }
        return new Mutants(List.copyOf(fixtures), List.copyOf(readingFixtures));
    }

    private static List<Path> scores(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().matches(".*\\.(musicxml|xml|mxl)"))
                    .sorted()
                    .toList();
        }
    }

    /** The mutant of a seed. */
    public Mutant of(long seed) {
        Random random = new Random(seed);
        Origin origin = origin(random);
        Harm harm = HARMS.get(random.nextInt(HARMS.size()));
        Packing packing = packing(harm, random);
        String text = new Mutator(seed).mutate(harm, text(origin, random));
        return new Mutant(seed, origin, packing, harm, text);
    }

    private static Origin origin(Random random) {
        int number = random.nextInt(FIXTURE_EVERY);
        return number == 0 ? Origin.FIXTURE : number % 2 == 0 ? Origin.READING_FIXTURE : Origin.MADE_UP;
    }

    private String text(Origin origin, Random random) {
        return switch (origin) {
            case MADE_UP -> GeneratedScore.of(random.nextInt()).text();
            case FIXTURE -> fixtures.get(random.nextInt(fixtures.size()));
            case READING_FIXTURE -> readingFixtures.get(random.nextInt(readingFixtures.size()));
        };
    }

    /** Every other one as most files are. */
    private static Packing packing(Harm harm, Random random) {
        Packing packing = random.nextBoolean() ? USUAL : Packing.of(random.nextInt(Integer.MAX_VALUE));
        boolean lacksArchive = harm.needsArchive() && packing.archive() == Archive.PLAIN;
        return lacksArchive ? packing.in(ARCHIVES.get(random.nextInt(ARCHIVES.size()))) : packing;
    }
}
