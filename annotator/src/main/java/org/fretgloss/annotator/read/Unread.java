package org.fretgloss.annotator.read;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/** The numbers of a score that cannot be used, as they are written, by the element that they stand in. */
final class Unread {

    private final IdentityHashMap<Object, Map<String, String>> numbers = new IdentityHashMap<>();

    /**
     * Takes over what cannot be used of an element.
     *
     * @param element as data binding hands it out
     * @param written the values by the names of the elements or attributes that hold them
     */
    void add(Object element, Map<String, String> written) {
        if (!written.isEmpty()) {
            numbers.put(element, Map.copyOf(written));
        }
    }

    /** A number of an element, as it is written; none where it is absent or can be used. */
    Optional<String> of(Object element, String number) {
        return Optional.ofNullable(numbers.getOrDefault(element, Map.of()).get(number));
    }

    /** Whether any number of an element cannot be used. */
    boolean marks(Object element) {
        return numbers.containsKey(element);
    }
}
