package org.fretgloss.annotator.read;

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

/** What a part's staves are: notation or tablature, shown or hidden, and how their strings are tuned. */
final class Staves {

    private final Set<Integer> tablature = new HashSet<>();
    private final Set<Integer> hidden = new HashSet<>();
    private final Map<Integer, StaffDetails> tunings = new HashMap<>();
    private OptionalInt capo = OptionalInt.empty();
    private OptionalInt lines = OptionalInt.empty();

    private Staves() {}

    static Staves of(Timeline part) {
        Staves staves = new Staves();
        for (Placed<Attributes> placed : part.attributes()) {
            placed.item().getClef().forEach(staves::clef);
            placed.item().getStaffDetails().forEach(staves::details);
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
        part.tunings.forEach((staff, details) -> tunings.put(staff + above, details));
        capo = capo.isPresent() ? capo : part.capo;
        lines = lines.isPresent() ? lines : part.lines;
    }

    boolean isTablature(int staff) {
        return tablature.contains(staff);
    }

    boolean isHidden(int staff) {
        return hidden.contains(staff);
    }

    /** The first tuning that each staff declares, lowest staff number first. */
    List<StaffDetails> tunings() {
        return tunings.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .toList();
    }

    /** The first capo that a staff declares. */
    OptionalInt capo() {
        return capo;
    }

    /** How many lines a tablature staff says it has. */
    OptionalInt tablatureLines() {
        return lines;
    }

    private void clef(Clef clef) {
        if (clef.getSign() == ClefSign.TAB) {
            tablature.add(Numbers.whole(clef.getNumber()).orElse(1));
        }
    }

    private void details(StaffDetails details) {
        int staff = Numbers.whole(details.getNumber()).orElse(1);
        if (details.getPrintObject() == YesNo.NO) {
            hidden.add(staff);
        } else if (details.getPrintObject() == YesNo.YES) {
            hidden.remove(staff);
        }
        if (!details.getStaffTuning().isEmpty()) {
            tunings.putIfAbsent(staff, details);
        }
        if (capo.isEmpty()) {
            capo = Numbers.whole(details.getCapo());
        }
        if (tablature.contains(staff) && lines.isEmpty()) {
            lines = Numbers.whole(details.getStaffLines());
        }
    }
}
