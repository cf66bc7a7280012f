package org.fretgloss.evaluation;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Measures the analysis on data that nobody here wrote, and its speed. The README beside this file tells how, and whose data. */
public final class Evaluation {

    private static final List<Measurement> MEASUREMENTS = List.of(new Phrases(), new Keys(), new Tabs(), new Doubts());

    private static final String SPEED = "speed=";

    private Evaluation() {}

    /**
     * Prints a table.
     *
     * @param args {@code NAME=FILE} for each set of data, or {@code speed=NOTES,NOTES...} and nothing else
     */
    public static void main(String @Nullable [] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args != null && args.length == 1 && args[0].startsWith(SPEED)) {
            new Speed().table(lengths(args[0])).forEach(out::println);
            return;
        }
        out.println("| what | result | cases |");
        out.println("|---|---|---|");
        for (String arg : args == null ? new String[0] : args) {
            String[] pair = arg.split("=", 2);
            if (pair.length < 2) {
                throw new IllegalArgumentException("'" + arg + "' is not of the form NAME=FILE");
            }
            figures(pair[0], Path.of(pair[1])).stream().map(Figure::row).forEach(out::println);
        }
    }

    private static List<Integer> lengths(String arg) {
        return Stream.of(arg.substring(SPEED.length()).split(","))
                .map(Integer::valueOf)
                .toList();
    }

    static List<Figure> figures(String name, Path file) throws IOException {
        Measurement measurement = MEASUREMENTS.stream()
                .filter(candidate -> candidate.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing is measured on '" + name + "'; there are "
                        + MEASUREMENTS.stream().map(Measurement::name).toList()));
        return measurement.measure(
                JsonParser.parseString(Files.readString(file)).getAsJsonArray());
    }
}
