package org.fretgloss.annotator.file;

/** What every XML text begins with; a file of any other kind is known by its lack. */
final class XmlStart {

    private XmlStart() {}

    /** Whether the text begins with a tag, after white space or not. */
    static boolean isIn(CharSequence text) {
        return text.codePoints().dropWhile(Character::isWhitespace).limit(1).anyMatch(c -> c == '<');
    }

    /** That a file is of some other kind. */
    static ScoreException missing() {
        return new ScoreException(
                "this is no MusicXML file; export the score as MusicXML (.musicxml or .mxl) from your notation program");
    }
}
