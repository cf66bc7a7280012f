package org.fretgloss.annotator.cli;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * An invented solo with expectations written by hand.
 *
 * @param name its folder's name
 * @param score the score
 * @param expected what must be found, with the options to find it by
 */
record Fixture(String name, Path score, JsonObject expected) {

    private static final Path FOLDER = Path.of("../fixtures");

    /** Those to which the analysis is held in every value. */
    static List<Fixture> all() {
        return in(FOLDER);
    }

    /** Those by which it is measured how often a teacher's labels and the analysis agree. */
    static List<Fixture> labelled() {
        return in(FOLDER.resolve("labelled"));
    }

    private static List<Fixture> in(Path parent) {
        try (Stream<Path> folders = Files.list(parent)) {
            return folders.filter(folder -> Files.exists(folder.resolve("expected.json")))
                    .sorted()
                    .map(Fixture::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Fixture of(Path folder) {
        try {
            return new Fixture(
                    String.valueOf(folder.getFileName()),
                    folder.resolve("score.musicxml"),
                    JsonParser.parseString(Files.readString(folder.resolve("expected.json")))
                            .getAsJsonObject());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> options() {
        return StreamSupport.stream(expected.getAsJsonArray("options").spliterator(), false)
                .map(JsonElement::getAsString)
                .toList();
    }

    /**
     * What the command finds, as it writes it with {@code --findings}.
     *
     * @param folder where to write
     */
    JsonObject found(Path folder) {
        Path findings = folder.resolve(name + ".json");
        List<String> arguments = new ArrayList<>(List.of("annotate", score.toString()));
        arguments.addAll(options());
        arguments.addAll(
                List.of("-o", folder.resolve(name + ".musicxml").toString(), "--findings", findings.toString()));
        Session session = Session.run(arguments);
        if (session.exit() != 0) {
            throw new AssertionError(session.err());
        }
        try {
            return JsonParser.parseString(Files.readString(findings)).getAsJsonObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
