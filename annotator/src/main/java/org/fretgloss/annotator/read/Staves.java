package org.fretgloss.annotator.read;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.StaffDetails;
import org.audiveris.proxymusic.YesNo;
import org.jspecify.annotations.Nullable;

/** What a part's staves are: notation or tablature, shown or hidden, and how their strings are tuned. */
final class Staves {

    /** The highest number of a staff, or of its lines, that is believed. */
    static final int MOST = 99;

    private final Set<Integer> tablature = new HashSet<>();
    private final Set<Integer> hidden = new HashSet<>();
    private final List<Placed<StaffDetails>> declared = new ArrayList<>();
    private final Map<Integer, Integer> clefOctaves = new HashMap<>();
    private OptionalInt lines = OptionalInt.empty();

    private Staves() {}

    /** The number of a staff within its part, from 1; the first where it is absent or absurd. */
    static int number(@Nullable BigInteger written) {
        return Numbers.whole(written).stream()
                .filter(staff -> staff >= 1 && staff <= MOST)
                .findFirst()
                .orElse(1);
    }

    static Staves of(Timeline part) {
        Staves staves = new Staves();
        for (Placed<Attributes> placed : part.attributes()) {
            placed.item().getClef().forEach(staves::clef);
            placed.item()
                    .getStaffDetails()
                    .forEach(details -> staves.take(new Placed<>(details, placed.bar(), placed.at())));
        }
        return staves;
    }

    /**
     * These staves with those of another part below them.
     *
     * @param above how many staves of these there are
     */
    Staves withBelow(Staves others, int above) {
        Staves both = new Staves();
        both.take(this, 0);
        both.take(others, above);
        return both;
    }

    private void take(Staves part, int above) {
        part.tablature.forEach(staff -> tablature.add(staff + above));
        part.hidden.forEach(staff -> hidden.add(staff + above));
        part.clefOctaves.forEach((staff, octaves) -> clefOctaves.put(staff + above, octaves));
        declared.addAll(part.declared);
        lines = lines.isPresent() ? lines : part.lines;
    }

    boolean isTablature(int staff) {
        return tablature.contains(staff);
    }

    boolean isHidden(int staff) {
        return hidden.contains(staff);
    }

    /** Everything that the staves declare of lines, tunings and capos, in the order of the document. */
    List<Placed<StaffDetails>> details() {
        return List.copyOf(declared);
    }

    boolean declareATuning() {
        return declared.stream()
                .anyMatch(placed -> !placed.item().getStaffTuning().isEmpty());
    }

    /** By how many octaves a staff's first clef has its notes sound above where an ordinary clef would: -1 for a small 8 below. */
    int clefOctaves(int staff) {
        return clefOctaves.getOrDefault(staff, 0);
    }

    /** How many lines a tablature staff says it has. */
    OptionalInt tablatureLines() {
        return lines;
    }

    private void clef(Clef clef) {
        if (clef.getSign() == ClefSign.TAB) {
            tablature.add(number(clef.getNumber()));
        }
        clefOctaves.putIfAbsent(number(clef.getNumber()), Signatures.octaves(clef.getClefOctaveChange()));
    }

    private void take(Placed<StaffDetails> placed) {
        StaffDetails details = placed.item();
        declared.add(placed);
        int staff = number(details.getNumber());
        if (details.getPrintObject() == YesNo.NO) {
            hidden.add(staff);
        } else if (details.getPrintObject() == YesNo.YES) {
            hidden.remove(staff);
        }
        if (tablature.contains(staff) && lines.isEmpty()) {
            lines = Numbers.whole(details.getStaffLines());
        }
    }
}
