package org.fretgloss.annotator.file;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fretgloss.annotator.file.Archives.CONTAINER;
import static org.fretgloss.annotator.file.Archives.container;
import static org.fretgloss.annotator.file.Archives.utf8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MxlArchiveTest {

    private static final String SCORE = ScoreTexts.partwise("<note/>");

    private static byte[] zip(Object... namesAndTexts) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            entries.put((String) namesAndTexts[i], utf8((String) namesAndTexts[i + 1]));
        }
        return Archives.zip(entries, false);
    }

    private static void refused(byte[] archive, String... words) {
        assertThatThrownBy(() -> ScoreFile.of("score.mxl", archive))
                .isInstanceOf(ScoreException.class)
                .satisfies(refusal ->
                        assertThat(refusal.getMessage()).contains(words).doesNotContain("\n"));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    @DisplayName("the score is told by content and read from the entry that the container names")
    void reading(boolean stored) throws Exception {
        ScoreFile file = ScoreFile.of("misnamed.xml", Archives.mxl(SCORE, stored));

        assertThat(file.container()).isEqualTo(Container.COMPRESSED);
        assertThat(file.text()).isEqualTo(SCORE);
        assertThat(ScoreFile.of("misnamed.mxl", utf8(SCORE)).container()).isEqualTo(Container.PLAIN);
    }

    @Test
    @DisplayName("the first root file that is MusicXML or says nothing is the score, else the first")
    void rootFiles() throws Exception {
        String typed = "<container><rootfiles><rootfile full-path='p.pdf' media-type='application/pdf'/>"
                + "<rootfile full-path='./s.xml' media-type='application/vnd.recordare.musicxml+xml'/></rootfiles></container>";
        String odd =
                "<container><rootfiles><rootfile full-path='s.xml' media-type='text/xml'/></rootfiles></container>";

        assertThat(ScoreFile.of("a", zip(CONTAINER, typed, "p.pdf", "x", "s.xml", SCORE))
                        .text())
                .isEqualTo(SCORE);
        assertThat(ScoreFile.of("a", zip("s.xml", SCORE, CONTAINER, odd)).text())
                .isEqualTo(SCORE);
        assertThat(ScoreFile.of("a", zip(CONTAINER, container("s.xml", "t.xml"), "t.xml", "x", "s.xml", SCORE))
                        .text())
                .isEqualTo(SCORE);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    @DisplayName("with another score, every other entry keeps its packed bytes and its particulars")
    void onlyTheScoreChanges(boolean stored) throws Exception {
        byte[] before = rich(stored);
        String longer = ScoreTexts.partwise("<note/>".repeat(500));

        byte[] after = ScoreFile.of("a", before).withText(longer);

        assertThat(ScoreFile.of("b", after).text()).isEqualTo(longer);
        try (ZipFile old = open(before);
                ZipFile fresh = open(after)) {
            List<ZipArchiveEntry> olds = Collections.list(old.getEntries());
            List<ZipArchiveEntry> freshes = Collections.list(fresh.getEntries());
            assertThat(freshes).extracting(ZipArchiveEntry::getName).containsExactlyElementsOf(names(olds));
            for (int i = 0; i < olds.size(); i++) {
                ZipArchiveEntry a = olds.get(i);
                ZipArchiveEntry b = freshes.get(i);
                assertThat(b.getMethod()).isEqualTo(a.getMethod());
                assertThat(b.getTime()).isEqualTo(a.getTime());
                assertThat(b.getComment()).isEqualTo(a.getComment());
                assertThat(b.getExternalAttributes()).isEqualTo(a.getExternalAttributes());
                assertThat(b.getLocalFileDataExtra()).isEqualTo(a.getLocalFileDataExtra());
                if (!a.getName().equals("song.musicxml")) {
                    assertThat(fresh.getRawInputStream(b)).hasSameContentAs(old.getRawInputStream(a));
                    assertThat(b.getCrc()).isEqualTo(a.getCrc());
                }
            }
        }
        assertThat(new String(after, ISO_8859_1)).endsWith("two words");
    }

    private static List<String> names(List<ZipArchiveEntry> entries) {
        return entries.stream().map(ZipArchiveEntry::getName).toList();
    }

    private static ZipFile open(byte[] archive) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(archive))
                .get();
    }

    /** An archive with a comment, entries with comments, extra fields and names beyond ASCII. */
    private static byte[] rich(boolean stored) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setComment("two words");
            put(zip, entry("mimetype", stored), "application/vnd.recordare.musicxml");
            put(zip, entry(CONTAINER, false), container("song.musicxml"));
            ZipEntry score = entry("song.musicxml", stored);
            score.setComment("the score");
            score.setExtra(new byte[] {0x34, 0x12, 2, 0, 7, 8});
            put(zip, score, SCORE);
            ZipEntry notes = entry("Pläne/\u266Fidees.txt", false);
            notes.setComment("the idea");
            put(zip, notes, "play it again ".repeat(100));
        }
        return bytes.toByteArray();
    }

    private static ZipEntry entry(String name, boolean stored) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(1_200_000_000_000L);
        entry.setMethod(stored ? ZipEntry.STORED : ZipEntry.DEFLATED);
        return entry;
    }

    private static void put(ZipOutputStream zip, ZipEntry entry, String text) throws IOException {
        byte[] content = utf8(text);
        if (entry.getMethod() == ZipEntry.STORED) {
            entry.setSize(content.length);
            entry.setCrc(ZipBounds.crcOf(content));
        }
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    @Test
    @DisplayName("names spelled in UTF-8 without saying so are found and kept")
    void undeclaredNames() throws Exception {
        byte[] archive = zip(CONTAINER, container("K\u00FChe.xml"), "K\u00FChe.xml", SCORE);
        clearUtf8Flags(archive);

        ScoreFile file = ScoreFile.of("a", archive);

        assertThat(file.text()).isEqualTo(SCORE);
        byte[] after = file.withText(SCORE);
        assertThat(new String(after, ISO_8859_1)).contains(new String(utf8("K\u00FChe.xml"), ISO_8859_1));
        assertThat(ScoreFile.of("b", after).text()).isEqualTo(SCORE);
    }

    /** Bit 11 of the general purpose flags says that names are UTF-8 (APPNOTE.TXT, 4.4.4). */
    private static void clearUtf8Flags(byte[] archive) {
        for (int i = 0; i + 10 < archive.length; i++) {
            boolean local = archive[i] == 'P' && archive[i + 1] == 'K' && archive[i + 2] == 3 && archive[i + 3] == 4;
            boolean central = archive[i] == 'P' && archive[i + 1] == 'K' && archive[i + 2] == 1 && archive[i + 3] == 2;
            if (local || central) {
                archive[i + (local ? 7 : 9)] &= ~8;
            }
        }
    }

    @Test
    @DisplayName("no container, a container without a score, a score that is missing")
    void incomplete() throws Exception {
        refused(zip("s.xml", SCORE, "t.musicxml", SCORE), CONTAINER);
        refused(zip("readme.txt", SCORE), CONTAINER);
        refused(zip(CONTAINER, "<container><rootfiles/></container>", "s.xml", SCORE), "names no score");
        refused(zip(CONTAINER, "<container>", "s.xml", SCORE), CONTAINER + " breaks off at line 1");
        refused(
                zip(CONTAINER, "<container>\n<a></b>", "s.xml", SCORE),
                CONTAINER + " is damaged at line 2: <a> is not closed before </b>");
        refused(zip(CONTAINER, container("t.xml"), "s.xml", SCORE), "'t.xml' is missing");
        refused(new byte[] {'P', 'K', 5, 6, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}, CONTAINER);
    }

    @Test
    @DisplayName("without a container the only entry that can be a score is it, and a notice says so")
    void onlyScore() throws Exception {
        ScoreFile file = ScoreFile.of(
                "a", zip("__MACOSX/a/._s.xml", "x", "a/S.XML", SCORE, "a/.hidden.xml", "x", "META-INF/other.xml", "x"));

        assertThat(file.text()).isEqualTo(SCORE);
        assertThat(file.notices()).singleElement().asString().contains("'a/S.XML'");
    }

    @ParameterizedTest
    @ValueSource(ints = {Deflater.BEST_SPEED, 4, Deflater.DEFAULT_COMPRESSION, Deflater.BEST_COMPRESSION})
    @DisplayName("another score and back again gives the same bytes, however hard it was packed")
    void thereAndBack(int level) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setLevel(level);
            zip.setComment("kept");
            put(zip, entry("s.xml", false), ScoreTexts.partwise("<note><duration>7</duration></note>".repeat(90)));
            put(zip, entry("later.txt", true), "later");
            put(zip, entry(CONTAINER, false), container("s.xml"));
        }
        ScoreFile before = ScoreFile.of("a", bytes.toByteArray());

        ScoreFile other = ScoreFile.of("b", before.withText(before.text().replace("<duration>", "<duration> ")));

        assertThat(other.text()).isNotEqualTo(before.text());
        assertThat(other.withText(before.text())).isEqualTo(bytes.toByteArray());

        String packedAlikeByAll = ScoreTexts.partwise("<note/>");
        ScoreFile ambiguous = ScoreFile.of("c", before.withText(packedAlikeByAll));

        assertThat(ambiguous.text()).isEqualTo(packedAlikeByAll);
        assertThat(ambiguous.withText(before.text())).isEqualTo(bytes.toByteArray());
        assertThat(ambiguous.withText(packedAlikeByAll)).isEqualTo(before.withText(packedAlikeByAll));
    }

    @Test
    @DisplayName("an archive with 64-bit records is written afresh, and reads the same")
    void zip64() throws Exception {
        SeekableInMemoryByteChannel channel = new SeekableInMemoryByteChannel();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(channel)) {
            zip.setUseZip64(Zip64Mode.Always);
            for (String[] entry : new String[][] {{CONTAINER, container("s.xml")}, {"s.xml", SCORE}}) {
                zip.putArchiveEntry(new ZipArchiveEntry(entry[0]));
                zip.write(utf8(entry[1]));
                zip.closeArchiveEntry();
            }
        }
        ScoreFile file = ScoreFile.of("a", Arrays.copyOf(channel.array(), (int) channel.size()));
        String longer = ScoreTexts.partwise("<note/>".repeat(500));

        assertThat(ScoreFile.of("b", file.withText(longer)).text()).isEqualTo(longer);
    }

    @Test
    @DisplayName("a score whose name two entries bear is refused")
    void twins() throws Exception {
        byte[] archive = zip(CONTAINER, container("s.xml"), "s.xml", SCORE, "t.xml", SCORE);
        String renamed = new String(archive, StandardCharsets.ISO_8859_1).replace("t.xml", "s.xml");

        refused(renamed.getBytes(StandardCharsets.ISO_8859_1), "two files of the name 's.xml'");
    }

    /** APPNOTE.TXT, 4.4.5: 8 is deflate, 9 an enhanced one, which what is read by it cannot be written back with. */
    @Test
    @DisplayName("a score that is packed by another method than deflate is refused")
    void otherMethods() throws Exception {
        byte[] archive = zip(CONTAINER, container("s.xml"), "s.xml", SCORE);
        for (int i = 0; i < archive.length - 12; i++) {
            boolean local = archive[i] == 'P' && archive[i + 1] == 'K' && archive[i + 2] == 3 && archive[i + 3] == 4;
            boolean central = archive[i] == 'P' && archive[i + 1] == 'K' && archive[i + 2] == 1 && archive[i + 3] == 2;
            if (local || central) {
                archive[i + (local ? 8 : 10)] = 9;
            }
        }
        refused(archive, "packed in an unusual way");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../s.xml", "a/../../s.xml", "/s.xml", "C:/s.xml", "..\\s.xml", "\\s.xml"})
    @DisplayName("a container that names a path outside the archive is refused, though an entry has that name")
    void leavingPaths(String path) throws Exception {
        refused(zip(CONTAINER, container(path), "s.xml", SCORE), "outside itself, '" + path + "'");
        refused(zip(CONTAINER, container(path), "s.xml", SCORE, path, SCORE), "outside itself, '" + path + "'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x", "a/../../x.png", "/x", "C:/x", "..\\x", "\\x"})
    @DisplayName("another entry of such a name is carried over as its bytes are, and nothing is written anywhere")
    void otherEntriesOutside(String path) throws Exception {
        byte[] archive = zip(CONTAINER, container("s.xml"), path, "x", "s.xml", SCORE);
        ScoreFile file = ScoreFile.of("a", archive);
        String longer = ScoreTexts.partwise("<note/><note/>");

        ScoreFile changed = ScoreFile.of("b", file.withText(longer));

        assertThat(changed.text()).isEqualTo(longer);
        assertThat(changed.withText(SCORE)).isEqualTo(archive);
    }

    @Test
    @DisplayName("cut off anywhere, or with a damaged score, it is refused in words")
    void damaged() throws Exception {
        byte[] whole = Archives.mxl(SCORE, true);

        for (int length = 4; length < whole.length; length += 7) {
            refused(Arrays.copyOf(whole, length), "damaged or cut off");
        }
        int inScore = new String(whole, ISO_8859_1).indexOf("<measure");
        whole[inScore + 2] ^= 1;
        refused(whole, "'song.musicxml' is damaged");
    }

    @Test
    @DisplayName("bytes changed anywhere never give anything but a score or a clear refusal")
    void changedBytes() throws Exception {
        byte[] whole = Archives.mxl(SCORE, false);

        for (int i = 4; i < whole.length; i++) {
            byte[] changed = whole.clone();
            changed[i] ^= (byte) (1 << i % 8);
            try {
                assertThat(ScoreFile.of("a", changed).text()).isEqualTo(SCORE);
            } catch (ScoreException e) {
                assertThat(e).hasMessageNotContaining("\n");
            }
        }
    }

    @Test
    @DisplayName("a zip bomb: too large a share, too many entries, entries that share bytes")
    void bombs() throws Exception {
        refused(zip(CONTAINER, container("s.xml"), "s.xml", " ".repeat(40_000_000)), "'s.xml' unpacks to more than");

        Object[] many = new Object[2 * (ZipBounds.MAX_ENTRIES + 1)];
        for (int i = 0; i < many.length; i += 2) {
            many[i] = "e" + i;
            many[i + 1] = "";
        }
        refused(zip(many), "entries, more than");

        refused(overlapping(), "overlap");
    }

    @Test
    @DisplayName("an archive whose end miscounts its entries is written whole")
    void miscounted() throws Exception {
        byte[] archive = zip("s.xml", SCORE, "b.txt", "b", CONTAINER, container("s.xml"));
        int end = new String(archive, ISO_8859_1).indexOf("PK\u0005\u0006");
        int total = 10;
        archive[end + total]--;
        ScoreFile file = ScoreFile.of("score.mxl", archive);
        String longer = ScoreTexts.partwise("<note/>".repeat(50));

        assertThat(ScoreFile.of("score.mxl", file.withText(longer)).text()).isEqualTo(longer);
    }

    /** An archive of which two entries claim the same packed bytes (APPNOTE.TXT, 4.3.12). */
    private static byte[] overlapping() throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("a", new byte[10_000]);
        entries.put("b", new byte[0]);
        byte[] archive = Archives.zip(entries, true);
        int first = new String(archive, ISO_8859_1).indexOf("PK\u0001\u0002");
        int second = new String(archive, ISO_8859_1).indexOf("PK\u0001\u0002", first + 1);
        int crcAndSizes = 16;
        System.arraycopy(archive, first + crcAndSizes, archive, second + crcAndSizes, 12);
        int offset = 42;
        System.arraycopy(archive, first + offset, archive, second + offset, 4);
        return archive;
    }
}
