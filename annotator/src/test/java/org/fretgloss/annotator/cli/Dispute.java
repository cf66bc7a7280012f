package org.fretgloss.annotator.cli;

import com.google.gson.Gson;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Labels that the analysis does not follow, for one reason, kept by hand in {@code fixtures/labelled/disputed.json}.
 *
 * @param reason why it does not
 * @param marks the marks in question, each by its solo and its {@linkplain Difference#name name}
 */
record Dispute(String reason, List<String> marks) {

    private static final Path FILE = Path.of("../fixtures/labelled/disputed.json");

    static List<Dispute> all() {
        try {
            return List.of(new Gson().fromJson(Files.readString(FILE), Dispute[].class));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The marks of all disputes. */
    static List<String> disputedMarks() {
        return all().stream().flatMap(dispute -> dispute.marks().stream()).toList();
    }
}
