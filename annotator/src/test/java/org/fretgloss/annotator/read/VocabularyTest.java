package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.audiveris.proxymusic.ScorePartwise;
import org.junit.jupiter.api.Test;

/** Holds what the vocabulary knows against the text of W3C's schema of MusicXML 4.0. */
class VocabularyTest {

    private static final String SCHEMA = schema();

    @Test
    void hasEveryElementOfTheSchema() {
        Set<String> known = new HashSet<>();
        models().forEach(model -> known.addAll(model.children().keySet()));
        assertThat(known).isEqualTo(named("<xs:element name=\"([^\"]+)\""));
    }

    @Test
    void hasEveryAttributeOfTheSchema() {
        Set<String> known = new HashSet<>();
        models().forEach(model -> known.addAll(model.attributes().keySet()));
        assertThat(known)
                .containsAll(named("<xs:attribute name=\"([^\"]+)\""))
                .allSatisfy(name ->
                        assertThat(SCHEMA).containsPattern("<xs:attribute (name|ref)=\"(\\w+:)?" + name + "\""));
    }

    @Test
    void hasNoValueThatTheSchemaDoesNotList() {
        Set<String> listed = named("<xs:enumeration value=\"([^\"]*)\"");
        assertThat(models()).allSatisfy(model -> {
            assertThat(listed).containsAll(model.values());
            assertThat(model.attributes().values())
                    .allSatisfy(values -> assertThat(listed).containsAll(values));
        });
    }

    /** The models of every element that may stand in a score. */
    private static Set<ElementModel> models() {
        Vocabulary vocabulary = new Vocabulary();
        Set<ElementModel> found = new HashSet<>();
        Deque<ElementModel> open = new ArrayDeque<>(Set.of(vocabulary.root()));
        while (!open.isEmpty()) {
            ElementModel model = open.remove();
            if (found.add(model)) {
                model.children()
                        .keySet()
                        .forEach(name -> open.add(vocabulary.child(model, name).orElseThrow()));
            }
        }
        return found;
    }

    private static Set<String> named(String pattern) {
        return Pattern.compile(pattern)
                .matcher(SCHEMA)
                .results()
                .map((MatchResult found) -> found.group(1))
                .collect(Collectors.toSet());
    }

    private static String schema() {
        String name = "/META-INF/jaxb/xsd/musicxml.xsd";
        try (InputStream schema = Objects.requireNonNull(ScorePartwise.class.getResourceAsStream(name), name)) {
            return new String(schema.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
