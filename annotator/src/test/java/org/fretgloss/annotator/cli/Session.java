package org.fretgloss.annotator.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** One run of the command in this process. */
record Session(int exit, ByteArrayOutputStream out, String err) {

    static Session run(List<String> arguments) {
        return run(new byte[0], arguments.toArray(String[]::new));
    }

    static Session run(String... arguments) {
        return run(new byte[0], arguments);
    }

    static Session run(byte[] in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(Console.of(new ByteArrayInputStream(in), out, err), arguments);
        return new Session(exit, out, err.toString(StandardCharsets.UTF_8));
    }

    String text() {
        return out.toString(StandardCharsets.UTF_8);
    }
}
