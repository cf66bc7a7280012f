package org.fretgloss.annotator.cli;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    static List<Fixture> all() {
        try (Stream<Path> folders = Files.list(FOLDER)) {
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

    @Override
    public String toString() {
        return name;
    }
}
