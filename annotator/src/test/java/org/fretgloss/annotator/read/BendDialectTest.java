package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.bend;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.preBend;
import static org.fretgloss.annotator.read.Scores.release;
import static org.fretgloss.annotator.read.Scores.tablature;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Bend;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts of the same bends, drawn by seed and written in each dialect, read alike. */
class BendDialectTest {

    private static final int NOTES = 6;

    /** A full bend with its release: in every dialect it shows which one it is. */
    private static final List<Fraction> TELLING = List.of(Fraction.ZERO, Fraction.of(2), Fraction.ZERO);

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void movementsReadAsTheReferenceHasThem(long seed) throws ScoreException {
        List<List<Fraction>> courses = courses(seed);
        assertThat(read(courses, BendDialectTest::movements)).isEqualTo(courses);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void heightsReadAsTheMovementsBetweenThem(long seed) throws ScoreException {
        List<List<Fraction>> courses = courses(seed);
        assertThat(read(courses, BendDialectTest::heights)).isEqualTo(courses);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void bendsRestatedOnATieReadAsHeld(long seed) throws ScoreException {
        List<List<Fraction>> courses = courses(seed);
        assertThat(read(courses, course -> restated(course, movements(course)))).isEqualTo(courses);
        assertThat(read(courses, course -> restated(course, heights(course)))).isEqualTo(courses);
    }

    private static List<List<Fraction>> courses(long seed) {
        Random random = new Random(seed);
        List<List<Fraction>> courses = new ArrayList<>();
        courses.add(TELLING);
        while (courses.size() < NOTES) {
            List<Fraction> course = new ArrayList<>();
            course.add(random.nextBoolean() ? Fraction.ZERO : height(random));
            int turns = random.nextInt(4) + (course.get(0).isZero() ? 1 : 0);
            for (int i = 0; i < turns; i++) {
                Fraction last = course.get(course.size() - 1);
                Fraction next = last.isPositive() && random.nextBoolean() ? Fraction.ZERO : height(random);
                if (!next.equals(last)) {
                    course.add(next);
                }
            }
            courses.add(course);
        }
        return courses;
    }

    /** A quarter of a semitone to six semitones. */
    private static Fraction height(Random random) {
        return Fraction.of(1 + random.nextInt(24), 4);
    }

    private static String movements(List<Fraction> course) {
        String first =
                course.get(0).isZero() ? "" : preBend(decimal(course.get(0).negated()));
        StringBuilder marks = new StringBuilder(first);
        for (int i = 1; i < course.size(); i++) {
            Fraction move = course.get(i).minus(course.get(i - 1));
            marks.append(move.isNegative() ? release(decimal(move)) : bend(decimal(move)));
        }
        return marks.toString();
    }

    private static String heights(List<Fraction> course) {
        String first = course.get(0).isZero() ? "" : preBend(decimal(course.get(0)));
        StringBuilder marks = new StringBuilder(first);
        for (int i = 1; i < course.size(); i++) {
            String height = decimal(course.get(i));
            marks.append(course.get(i).isLessThan(course.get(i - 1)) ? release(height) : bend(height));
        }
        return marks.toString();
    }

    /** With a tied note on which the bend that the string has reached is written again, if it is bent there. */
    private static String restated(List<Fraction> course, String marks) {
        Fraction last = course.get(course.size() - 1);
        String again = last.isZero() ? "" : bend(decimal(last));
        return marks + "|" + again;
    }

    private static List<List<Fraction>> read(List<List<Fraction>> courses, Function<List<Fraction>, String> writing)
            throws ScoreException {
        String[] bars =
                courses.stream().map(writing).map(BendDialectTest::strokes).toArray(String[]::new);
        return notes(tablature(bars)).stream()
                .flatMap(note -> note.bend().stream())
                .map(Bend::heights)
                .collect(Collectors.toList());
    }

    /** A note, and after a bar a note that it is tied to. */
    private static String strokes(String marks) {
        String[] tied = marks.split("\\|", -1);
        String first = fretted(2, 8, QUARTER, tied[0]);
        return tied.length == 1
                ? first
                : with("<tie type=\"start\"/>", first) + with("<tie type=\"stop\"/>", fretted(2, 8, QUARTER, tied[1]));
    }

    private static String decimal(Fraction semitones) {
        return String.valueOf(semitones.toDouble());
    }
}
