package org.fretgloss.annotator.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.fretgloss.annotator.report.PlainText;
import org.fretgloss.annotator.write.Ascii;

/**
 * The three streams of a command. Results go to standard output as bytes; what a person reads goes to standard error,
 * in ASCII where its encoding cannot show ♭ ♯ →.
 */
final class Console {

    private final InputStream in;
    private final OutputStream out;
    private final PrintStream err;
    private final Charset errCharset;
    private final boolean showsGlyphs;

    private Console(InputStream in, OutputStream out, PrintStream err, Charset errCharset) {
        this.in = in;
        this.out = out;
        this.err = err;
        this.errCharset = errCharset;
        this.showsGlyphs = errCharset.newEncoder().canEncode("♭♯→·…′½¼¾⅓⅔");
    }

    /** The process's own streams. */
    static Console system() {
        Charset charset = Charset.forName(System.getProperty(
                "sun.stderr.encoding", System.getProperty("native.encoding", StandardCharsets.UTF_8.name())));
        return new Console(System.in, System.out, System.err, charset);
    }

    /** Streams for a test; standard error is UTF-8. */
    static Console of(InputStream in, OutputStream out, OutputStream err) {
        return new Console(in, out, new PrintStream(err, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }

    InputStream in() {
        return in;
    }

    OutputStream out() {
        return out;
    }

    /** One line to standard error. */
    void tell(String line) {
        err.println(readable(line));
    }

    /** Text for people, as the terminal can show it. */
    String readable(String text) {
        String safe = PlainText.of(text);
        return showsGlyphs ? safe : Ascii.of(safe);
    }

    Charset errCharset() {
        return errCharset;
    }

    PrintStream err() {
        return err;
    }
}
