package org.fretgloss.annotator.file;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where the records of an archive stand that speak of one entry, so that its content can be exchanged while every other
 * byte stays. Field offsets are those of APPNOTE.TXT, sections 4.3.7 (local header), 4.3.9 (data descriptor), 4.3.12
 * (central directory) and 4.3.16 (end record).
 */
final class ZipRecords {

    private static final int LOCAL_SIGN = 0x04034b50;
    private static final int CENTRAL_SIGN = 0x02014b50;
    private static final int DESCRIPTOR_SIGN = 0x08074b50;
    private static final int DESCRIPTOR_FLAG = 1 << 3;

    private final byte[] bytes;
    private final ByteBuffer archive;
    private final int end;
    private final List<Integer> centrals;
    private final int central;
    private final int local;
    private final int dataStart;
    private final int dataEnd;

    private ZipRecords(byte[] bytes, int index) {
        this.bytes = bytes;
        this.archive = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        this.end = ZipComment.endRecord(bytes).orElseThrow(IndexOutOfBoundsException::new);
        this.centrals = centrals(archive, end);
        this.central = centrals.get(index);
        this.local = archive.getInt(central + 42);
        this.dataStart = local + 30 + unsignedShort(archive, local + 26) + unsignedShort(archive, local + 28);
        this.dataEnd = Math.addExact(dataStart, archive.getInt(central + 20));
    }

    /** The records of the entry of that place; none where the archive is laid out in a way of its own, as by Zip64. */
    static Optional<ZipRecords> of(byte[] archive, int index) {
        try {
            ZipRecords records = new ZipRecords(archive, index);
            return records.areAsExpected() ? Optional.of(records) : Optional.empty();
        } catch (IndexOutOfBoundsException | ArithmeticException e) {
            return Optional.empty();
        }
    }

    private static List<Integer> centrals(ByteBuffer archive, int end) {
        List<Integer> places = new ArrayList<>();
        int at = archive.getInt(end + 16);
        for (int i = unsignedShort(archive, end + 10); i > 0; i--) {
            if (archive.getInt(at) != CENTRAL_SIGN) {
                throw new IndexOutOfBoundsException("no entry of the directory at " + at);
            }
            places.add(at);
            at += 46
                    + unsignedShort(archive, at + 28)
                    + unsignedShort(archive, at + 30)
                    + unsignedShort(archive, at + 32);
        }
        if (at != end) {
            // The end record miscounts, or other records stand before it, whose offsets would have to follow too.
            throw new IndexOutOfBoundsException("the directory ends at " + at + ", not at " + end);
        }
        return places;
    }

    private boolean areAsExpected() {
        boolean described = !hasDescriptor() || speaksOfIt(archive, descriptor());
        return archive.getInt(local) == LOCAL_SIGN && dataEnd >= dataStart && dataEnd <= centrals.get(0) && described;
    }

    /** The entry's content as it is packed. */
    byte[] packed() {
        return Arrays.copyOfRange(bytes, dataStart, dataEnd);
    }

    boolean isStored() {
        return unsignedShort(archive, central + 10) == 0;
    }

    boolean isDeflated() {
        return unsignedShort(archive, central + 10) == 8;
    }

    /**
     * The archive with other content in the entry.
     *
     * @param packed the content as it is packed
     * @param size bytes of the content
     * @param crc check sum of the content
     */
    byte[] with(byte[] packed, int size, int crc) {
        int shift = packed.length - (dataEnd - dataStart);
        ByteBuffer out = ByteBuffer.allocate(bytes.length + shift).order(ByteOrder.LITTLE_ENDIAN);
        out.put(bytes, 0, dataStart).put(packed).put(bytes, dataEnd, bytes.length - dataEnd);
        if (speaksOfIt(archive, local + 14)) {
            tell(out, local + 14, crc, packed.length, size);
        }
        if (hasDescriptor()) {
            tell(out, descriptor() + shift, crc, packed.length, size);
        }
        tell(out, central + shift + 16, crc, packed.length, size);
        for (int record : centrals) {
            int offset = archive.getInt(record + 42);
            if (offset > local) {
                out.putInt(record + shift + 42, offset + shift);
            }
        }
        out.putInt(end + shift + 16, archive.getInt(end + 16) + shift);
        return out.array();
    }

    private boolean hasDescriptor() {
        return (unsignedShort(archive, local + 6) & DESCRIPTOR_FLAG) != 0;
    }

    /** Where the check sum of the descriptor stands, whose signature may be missing. */
    private int descriptor() {
        return archive.getInt(dataEnd) == DESCRIPTOR_SIGN ? dataEnd + 4 : dataEnd;
    }

    /** Whether check sum and sizes stand there; before a descriptor they may be left at zero. */
    private boolean speaksOfIt(ByteBuffer buffer, int at) {
        return buffer.getInt(at) == archive.getInt(central + 16)
                && buffer.getInt(at + 4) == archive.getInt(central + 20)
                && buffer.getInt(at + 8) == archive.getInt(central + 24);
    }

    private static void tell(ByteBuffer out, int at, int crc, int packedSize, int size) {
        out.putInt(at, crc).putInt(at + 4, packedSize).putInt(at + 8, size);
    }

    private static int unsignedShort(ByteBuffer buffer, int at) {
        return buffer.getShort(at) & 0xFFFF;
    }
}
