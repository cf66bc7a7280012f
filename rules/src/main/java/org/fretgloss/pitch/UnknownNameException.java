package org.fretgloss.pitch;

import java.util.List;

/** A name that is not among those known: of a scale, a form, a rule. Whoever shows it can name the nearest. */
public final class UnknownNameException extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    private final String given;
    private final transient List<String> known;

    /**
     * Says that a name is not known.
     *
     * @param what what the name should have been, with its article: "a scale"
     * @param given the name as it was given
     * @param known the names there are
     */
    public UnknownNameException(String what, String given, List<String> known) {
        super("'" + given + "' is not the name of " + what);
        this.given = given;
        this.known = List.copyOf(known);
    }

    /** The name as it was given. */
    public String given() {
        return given;
    }

    /** The names there are. */
    public List<String> known() {
        return known;
    }
}
