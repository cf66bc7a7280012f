package org.fretgloss.annotator.file;

/** An element of which the end has not been read yet. */
final class OpenElement {

    private final String name;
    private final String key;
    private final int start;
    private final int startTagEnd;
    private int contentEnd;
    private int beforePlayback;
    private boolean playbackSeen;

    /**
     * An element whose start tag was read.
     *
     * @param name its local name; empty for an element of another vocabulary
     * @param key the id of a part or the number of a measure; otherwise empty
     */
    OpenElement(String name, String key, int start, int startTagEnd) {
        this.name = name;
        this.key = key;
        this.start = start;
        this.startTagEnd = startTagEnd;
        this.contentEnd = startTagEnd;
        this.beforePlayback = startTagEnd;
    }

    String name() {
        return name;
    }

    String key() {
        return key;
    }

    boolean is(String other) {
        return name.equals(other);
    }

    /** A child ended: what may follow it goes after it. */
    void childClosed(String child, int end) {
        contentEnd = end;
        playbackSeen |= child.equals("play") || child.equals("listen");
        if (!playbackSeen) {
            beforePlayback = end;
        }
    }

    /** Just after the last child before {@code play} or {@code listen}. */
    int beforePlayback() {
        return beforePlayback;
    }

    ElementSite closed(int endTagStart, int end) {
        boolean emptyTag = startTagEnd == end;
        return new ElementSite(start, startTagEnd, contentEnd, emptyTag ? end : endTagStart, end);
    }
}
