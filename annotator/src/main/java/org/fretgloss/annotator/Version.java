package org.fretgloss.annotator;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/** The version of this build. */
public final class Version {

    /** Such as "0.1.0". */
    public static final String NUMBER = read();

    private Version() {}

    private static String read() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
            properties.load(Objects.requireNonNull(in, "version.properties is part of the jar"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Objects.requireNonNull(properties.getProperty("version"), "a build has a version");
    }
}
