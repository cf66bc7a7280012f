package org.fretgloss.annotator;

import java.util.List;
import org.fretgloss.annotator.write.Stripped;

/** What the user is told where lines of ours had been changed by hand before they were taken out. */
final class Edited {

    private Edited() {}

    static List<String> notices(Stripped stripped) {
        return switch (stripped.edits()) {
            case NONE -> List.of();
            case SOME -> List.of("lines of ours had been changed by hand in this score; the changes are gone");
            case UNKNOWN ->
                List.of("the score has lines of ours but not our field, so whether they were changed by hand"
                        + " cannot be told");
        };
    }
}
