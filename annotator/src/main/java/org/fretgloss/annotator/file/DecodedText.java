package org.fretgloss.annotator.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * The text of a score as its bytes spell it, decoded strictly: no byte is guessed at, and encoding the text again gives
 * the same bytes.
 *
 * <p>The encoding is told by the byte order mark, then by the byte pattern of the first {@code <}, then by the XML
 * declaration, then it is UTF-8 (the order of XML 1.0, appendix F). Where the bytes contradict what is declared, the
 * bytes decide: text that is UTF-8 throughout is never another encoding's, and text of which no letter is UTF-8 is in
 * an encoding of one byte a letter.
 *
 * @param text without a byte order mark
 * @param encoding how to turn it back into bytes
 * @param contradiction what the user should know where the file says another encoding than its own
 */
record DecodedText(String text, Encoding encoding, Optional<String> contradiction) {

    static DecodedText of(byte[] bytes) throws ScoreException {
        DecodedText decoded = decode(bytes);
        if (!Arrays.equals(decoded.encoding.encode(decoded.text), bytes)) {
            throw new ScoreException("its encoding, " + decoded.encoding.charset()
                    + ", cannot be written back byte for byte; save the score as UTF-8");
        }
        return decoded;
    }

    /** The characters that everyone reads alike who opens the file, whether they believe its bytes or its word. */
    Charset undisputed() {
        return contradiction.isPresent() ? StandardCharsets.US_ASCII : encoding.charset();
    }

    private static DecodedText decode(byte[] bytes) throws ScoreException {
        Optional<Encoding> told = EncodingSigns.in(bytes);
        return told.isPresent() ? asTold(bytes, told.get()) : asDeclared(bytes);
    }

    private static DecodedText asTold(byte[] bytes, Encoding encoding) throws ScoreException {
        DecodedText decoded = strict(bytes, encoding);
        return EncodingSigns.declaredIn(bytes, encoding.charset())
                .filter(declared -> !EncodingSigns.agree(declared, encoding.charset()))
                .map(declared -> decoded.against("the file says its encoding is " + declared))
                .orElse(decoded);
    }

    private static DecodedText asDeclared(byte[] bytes) throws ScoreException {
        Optional<String> declared = EncodingSigns.declaredIn(bytes, StandardCharsets.ISO_8859_1);
        // The declaration could be read byte by byte, so an encoding of two or four bytes a character cannot be meant.
        Optional<Charset> meant = declared.isPresent()
                ? declared.flatMap(EncodingSigns::charsetNamed).filter(named -> !EncodingSigns.isWide(named))
                : Optional.of(StandardCharsets.UTF_8);
        Charset real = charsetOf(bytes, meant.orElse(StandardCharsets.UTF_8));
        DecodedText decoded = strict(bytes, new Encoding(real, false));
        return meant.filter(real::equals).isPresent()
                ? decoded
                : decoded.against(declared.map(name -> "the file says its encoding is " + name)
                        .orElse("the file does not say its encoding, so it should be UTF-8"));
    }

    private static Charset charsetOf(byte[] bytes, Charset meant) {
        ByteEvidence evidence = ByteEvidence.in(bytes);
        if (evidence.speaksForUtf8() && (EncodingSigns.isOneByte(meant) || !decodes(bytes, meant))) {
            return StandardCharsets.UTF_8;
        }
        boolean needsUtf8 = meant.equals(StandardCharsets.UTF_8) || meant.equals(StandardCharsets.US_ASCII);
        return evidence.speaksAgainstUtf8() && needsUtf8 ? evidence.oneByteCharset() : meant;
    }

    private static boolean decodes(byte[] bytes, Charset charset) {
        try {
            charset.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private DecodedText against(String word) {
        String name = encoding.charset().name();
        return new DecodedText(
                text, encoding, Optional.of(word + ", but its bytes are " + name + "; it was read as " + name));
    }

    private static DecodedText strict(byte[] bytes, Encoding encoding) throws ScoreException {
        CharsetDecoder decoder = encoding.charset()
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        int start = encoding.mark().length;
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate((int) Math.ceil(bytes.length * (double) decoder.maxCharsPerByte()) + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (!result.isError()) {
            result = decoder.flush(out);
        }
        out.flip();
        if (result.isError()) {
            throw malformed(encoding.charset(), in.position(), out);
        }
        return new DecodedText(out.toString(), encoding, Optional.empty());
    }

    private static ScoreException malformed(Charset charset, int offset, CharSequence before) {
        if (!XmlStart.isIn(before)) {
            return XmlStart.missing();
        }
        return new ScoreException(
                "line " + TextPlace.at(before, before.length()).line() + " holds bytes that are no " + charset.name()
                        + " text (at byte " + offset + "); save the score again as UTF-8",
                new CharacterCodingException());
    }
}
