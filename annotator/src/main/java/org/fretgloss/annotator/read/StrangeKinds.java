package org.fretgloss.annotator.read;

import java.util.HashSet;
import java.util.Set;

/**
 * What is told about kinds of things that MusicXML does not have: each of the first ones, and how many there are besides;
 * and about numbers that cannot be used.
 */
final class StrangeKinds {

    private static final int MOST_TOLD = 20;

    /** A file with more kinds is no score any more, and need not be counted to its end. */
    private static final int MOST_COUNTED = 1000;

    private final Notices notices = new Notices();
    private final Notices numbers = new Notices();
    private final Set<String> told = new HashSet<>();
    private final Set<String> further = new HashSet<>();
    private String firstFurtherBar = "";

    /** Of numbers the reader knows every kind there is, so all of them are told. */
    void tellNumber(String where, String written, NumberUse use, String bar) {
        numbers.say(
                where + use.instead(),
                "the value " + Notices.quoted(written) + " of " + where + " is no "
                        + use.shape().name() + ", " + use.instead(),
                bar);
    }

    /** A number that its element must hold is missing. */
    void tellMissing(String name, String bearer, NumberUse use, String bar) {
        numbers.say("<" + name + "> is missing from <" + bearer + ">, " + use.instead(), bar);
    }

    /** A part has no bar. */
    void tellPart(String id) {
        numbers.say("the part " + Notices.quoted(id)
                + " is not in the part list, so it goes by what stands at its place" + " there");
    }

    void tell(String kind, String bar) {
        if (told.size() < MOST_TOLD || told.contains(kind)) {
            told.add(kind);
            notices.say(kind + " is not understood here and is passed over", bar);
        } else if (further.size() < MOST_COUNTED) {
            firstFurtherBar = further.isEmpty() ? bar : firstFurtherBar;
            further.add(kind);
        }
    }

    /** What is told of everything so far. */
    Notices notices() {
        Notices all = new Notices();
        all.addAll(notices);
        if (!further.isEmpty()) {
            String number = further.size() == MOST_COUNTED ? "more than " + MOST_COUNTED : "" + further.size();
            boolean one = further.size() == 1;
            all.say(
                    "and " + number + (one ? " more kind" : " more kinds") + " of elements, attributes and values "
                            + (one ? "is" : "are") + " not understood here and "
                            + (one ? "is" : "are") + " passed over",
                    firstFurtherBar);
        }
        all.addAll(numbers);
        return all;
    }
}
