package org.fretgloss.annotator.read;

import java.util.Map;
import java.util.Set;

/**
 * What MusicXML knows of one kind of element.
 *
 * @param children by name, the class that data binding fills from each element that may stand in it
 * @param attributes by name, the values that an attribute may have; none where it may have any
 * @param values what its text may be; none where it may be anything
 */
record ElementModel(Map<String, Class<?>> children, Map<String, Set<String>> attributes, Set<String> values) {

    ElementModel {
        children = Map.copyOf(children);
        attributes = Map.copyOf(attributes);
        values = Set.copyOf(values);
    }
}
