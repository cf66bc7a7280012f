package org.fretgloss.annotator.read;

import jakarta.xml.bind.annotation.XmlAttribute;
import jakarta.xml.bind.annotation.XmlElement;
import jakarta.xml.bind.annotation.XmlElementDecl;
import jakarta.xml.bind.annotation.XmlElementRef;
import jakarta.xml.bind.annotation.XmlElementRefs;
import jakarta.xml.bind.annotation.XmlElements;
import jakarta.xml.bind.annotation.XmlEnumValue;
import jakarta.xml.bind.annotation.XmlRootElement;
import jakarta.xml.bind.annotation.XmlTransient;
import jakarta.xml.bind.annotation.XmlValue;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.audiveris.proxymusic.NoteType;
import org.audiveris.proxymusic.ObjectFactory;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.ScoreTimewise;

/**
 * The elements, attributes and listed values of MusicXML 4.0, which holds those of the versions before.
 *
 * <p>They are read off the classes that data binding fills, which were made from W3C's schema: so what is missing here is
 * exactly what data binding passes over. A class is looked at when a score first needs it. A few lists of values became
 * plain text in these classes; of those only note values matter to anybody here, and {@link Lengths} has them.
 */
final class Vocabulary {

    /** By which data binding says that a name or a type is the field's own. */
    private static final String OF_FIELD = "##default";

    private static final ElementModel ROOT = new ElementModel(
            Stream.of(ScorePartwise.class, ScoreTimewise.class)
                    .collect(Collectors.toMap(
                            type -> type.getAnnotation(XmlRootElement.class).name(), type -> type)),
            Map.of(),
            Set.of());

    private final Map<Class<?>, ElementModel> models = new HashMap<>();

    /** Of elements whose class does not tell their name: what they hold, by the class they stand in and their name. */
    private final Map<Class<?>, Map<String, Class<?>>> declared = declarations();

    /** What may stand where a document begins. */
    ElementModel root() {
        return ROOT;
    }

    /** What is known of an element that stands in another; nothing where it may not stand there. */
    Optional<ElementModel> child(ElementModel parent, String name) {
        return Optional.ofNullable(parent.children().get(name)).map(type -> models.computeIfAbsent(type, this::read));
    }

    private static Map<Class<?>, Map<String, Class<?>>> declarations() {
        Map<Class<?>, Map<String, Class<?>>> declared = new HashMap<>();
        for (Method method : ObjectFactory.class.getMethods()) {
            XmlElementDecl declaration = method.getAnnotation(XmlElementDecl.class);
            if (declaration != null) {
                declared.computeIfAbsent(declaration.scope(), unseen -> new HashMap<>())
                        .put(declaration.name(), argument(method.getGenericReturnType()));
            }
        }
        return declared;
    }

    private ElementModel read(Class<?> type) {
        Builder builder = new Builder();
        builder.values = values(type);
        boolean isBound = type.getPackage() == ScorePartwise.class.getPackage() && !type.isEnum();
        for (Class<?> bound = type; isBound && bound != Object.class; bound = bound.getSuperclass()) {
            for (Field field : bound.getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers()) && !field.isAnnotationPresent(XmlTransient.class)) {
                    add(field, builder);
                }
            }
        }
        if (type == NoteType.class) {
            builder.values = Set.copyOf(Lengths.TYPES);
        }
        return builder.model();
    }

    private void add(Field field, Builder builder) {
        XmlAttribute attribute = field.getAnnotation(XmlAttribute.class);
        XmlElementRefs references = field.getAnnotation(XmlElementRefs.class);
        XmlElements elements = field.getAnnotation(XmlElements.class);
        if (attribute != null) {
            builder.attributes.put(name(attribute.name(), field), values(field.getType()));
        } else if (field.isAnnotationPresent(XmlValue.class)) {
            builder.values = values(field.getType());
        } else if (references != null) {
            Arrays.stream(references.value()).forEach(reference -> add(reference, field, builder));
        } else if (elements != null) {
            Arrays.stream(elements.value()).forEach(element -> add(element, field, builder));
        } else if (field.isAnnotationPresent(XmlElement.class)) {
            add(field.getAnnotation(XmlElement.class), field, builder);
        } else {
            builder.children.put(field.getName(), argument(field.getGenericType()));
        }
    }

    private static void add(XmlElement element, Field field, Builder builder) {
        boolean saysType = element.type() != XmlElement.DEFAULT.class;
        builder.children.put(name(element.name(), field), saysType ? element.type() : argument(field.getGenericType()));
    }

    private void add(XmlElementRef reference, Field field, Builder builder) {
        Map<String, Class<?>> scoped = declared.getOrDefault(field.getDeclaringClass(), Map.of());
        Map<String, Class<?>> global = declared.getOrDefault(XmlElementDecl.GLOBAL.class, Map.of());
        String name = reference.name();
        builder.children.put(name, scoped.getOrDefault(name, global.getOrDefault(name, Object.class)));
    }

    private static String name(String annotated, Field field) {
        return annotated.equals(OF_FIELD) ? field.getName() : annotated;
    }

    /** What a list or a wrapper holds; a type that holds nothing is meant itself. */
    private static Class<?> argument(Type type) {
        Type held = type instanceof ParameterizedType wrapper ? wrapper.getActualTypeArguments()[0] : type;
        return held instanceof Class<?> plain ? plain : Object.class;
    }

    private static Set<String> values(Class<?> type) {
        return type.isEnum()
                ? Arrays.stream(type.getFields())
                        .filter(Field::isEnumConstant)
                        .map(Vocabulary::value)
                        .collect(Collectors.toSet())
                : Set.of();
    }

    private static String value(Field constant) {
        XmlEnumValue written = constant.getAnnotation(XmlEnumValue.class);
        return written == null ? constant.getName() : written.value();
    }

    /** A model in the making. */
    private static final class Builder {

        private final Map<String, Class<?>> children = new HashMap<>();
        private final Map<String, Set<String>> attributes = new HashMap<>();
        private Set<String> values = Set.of();

        ElementModel model() {
            return new ElementModel(children, attributes, values);
        }
    }
}
