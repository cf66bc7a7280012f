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
import java.util.List;
import java.util.Optional;

/**
 * The text of a score as its bytes spell it, decoded strictly: no byte is guessed at, and encoding the text again gives
 * the same bytes.
 *
 * <p>The encoding is told by the byte order mark, then by the byte pattern of the first {@code <}, then by the XML
 * declaration, then it is UTF-8 (the order of XML 1.0, appendix F). Where the declaration contradicts the bytes, the
 * bytes decide and a notice says so.
 *
 * @param text without a byte order mark
 * @param encoding how to turn it back into bytes
 * @param notices what the user should know
 */
record DecodedText(String text, Encoding encoding, List<String> notices) {

    DecodedText {
        notices = List.copyOf(notices);
    }

    static DecodedText of(byte[] bytes) throws ScoreException {
        DecodedText decoded = decode(bytes);
        if (!Arrays.equals(decoded.encoding.encode(decoded.text), bytes)) {
            throw new ScoreException("its encoding, " + decoded.encoding.charset()
                    + ", cannot be written back byte for byte; save the score as UTF-8");
        }
        return decoded;
    }

    private static DecodedText decode(byte[] bytes) throws ScoreException {
        Optional<Encoding> told = EncodingSigns.in(bytes);
        if (told.isPresent()) {
            return asTold(bytes, told.get());
        }
        Optional<String> declared = EncodingSigns.declaredIn(bytes, StandardCharsets.ISO_8859_1);
        return declared.isPresent() ? asDeclared(bytes, declared.get()) : strict(bytes, plain(StandardCharsets.UTF_8));
    }

    private static DecodedText asTold(byte[] bytes, Encoding encoding) throws ScoreException {
        DecodedText decoded = strict(bytes, encoding);
        return EncodingSigns.declaredIn(bytes, encoding.charset())
                .filter(declared -> !EncodingSigns.agree(declared, encoding.charset()))
                .map(decoded::noticing)
                .orElse(decoded);
    }

    /** The declaration could be read byte by byte, so an encoding of two or four bytes a character cannot be meant. */
    private static DecodedText asDeclared(byte[] bytes, String name) throws ScoreException {
        Optional<Charset> charset = EncodingSigns.charsetNamed(name).filter(named -> !EncodingSigns.isWide(named));
        if (charset.isEmpty()) {
            return strict(bytes, plain(StandardCharsets.UTF_8)).noticing(name);
        }
        try {
            return strict(bytes, plain(charset.get()));
        } catch (ScoreException asDeclared) {
            try {
                return strict(bytes, plain(StandardCharsets.UTF_8)).noticing(name);
            } catch (ScoreException asUtf8) {
                asDeclared.addSuppressed(asUtf8);
                throw asDeclared;
            }
        }
    }

    private static Encoding plain(Charset charset) {
        return new Encoding(charset, false);
    }

    private DecodedText noticing(String declared) {
        return new DecodedText(
                text,
                encoding,
                List.of("the file says its encoding is " + declared + ", but its bytes are "
                        + encoding.charset().name() + "; it was read as "
                        + encoding.charset().name()));
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
        return new DecodedText(out.toString(), encoding, List.of());
    }

    private static ScoreException malformed(Charset charset, int offset, CharSequence before) {
        return new ScoreException(
                "line " + TextPlace.at(before, before.length()).line() + " holds bytes that are no " + charset.name()
                        + " text (at byte " + offset + "); save the score again as UTF-8",
                new CharacterCodingException());
    }
}
