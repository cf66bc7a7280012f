package org.fretgloss.annotator.report;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Locale;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Form;
import org.fretgloss.analysis.Home;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.HomeSection;
import org.fretgloss.analysis.SilenceShare;
import org.fretgloss.annotator.Report;
import org.fretgloss.annotator.Version;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.rule.Doubt;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Gloss;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * The findings of one score as JSON, format {@value #FORMAT}; {@code findings.schema.json} beside this class describes
 * it.
 */
public final class FindingsJson {

    public static final String FORMAT = "fretgloss-findings/1";

    private static final Gson GSON = new GsonBuilder()
            .setPrettyPrinting()
            .disableHtmlEscaping()
            .serializeNulls()
            .create();

    private FindingsJson() {}

    /** The whole document, ending in a line feed. */
    public static String of(Report report) {
        return text(document(report));
    }

    /** The whole document with everything that is known of each note, found or not. */
    public static String withAllNotes(Report report) {
        JsonObject document = document(report);
        document.add("notes", NotesJson.of(report));
        return text(document);
    }

    private static String text(JsonObject document) {
        return escaped(GSON.toJson(document)) + "\n";
    }

    private static JsonObject document(Report report) {
        Analysis analysis = report.analysis();
        Solo solo = analysis.solo();
        JsonObject root = new JsonObject();
        root.addProperty("format", FORMAT);
        root.addProperty("tool", "fretgloss " + Version.NUMBER);
        root.addProperty("score", report.score());
        JsonObject part = new JsonObject();
        part.addProperty("id", solo.part().id());
        part.addProperty("name", solo.part().name());
        root.add("part", part);
        root.add(
                "tuning",
                strings(solo.tuning().strings().stream().map(Pitch::toString).toList()));
        root.addProperty("capo", solo.tuning().capo());
        root.add("home", home(analysis.home()));
        root.add("sections", sections(analysis));
        root.add("form", analysis.form().<JsonElement>map(FindingsJson::form).orElse(JsonNull.INSTANCE));
        root.add("summary", summary(analysis));
        JsonArray findings = new JsonArray();
        report.glosses().forEach(gloss -> findings.add(finding(gloss, report)));
        root.add("findings", findings);
        return root;
    }

    /** Control characters and direction marks of the score's texts, which JSON lets pass, as escapes (RFC 8259, 7). */
    private static String escaped(String json) {
        StringBuilder escaped = new StringBuilder(json.length());
        json.codePoints().forEach(c -> {
            if (c == '\n' || PlainText.isHarmless(c)) {
                escaped.appendCodePoint(c);
            } else {
                for (char unit : Character.toChars(c)) {
                    escaped.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
                }
            }
        });
        return escaped.toString();
    }

    private static JsonObject home(Home home) {
        JsonObject json = scale(home.scale());
        JsonArray added = new JsonArray();
        home.added().forEach(note -> {
            JsonObject one = new JsonObject();
            one.addProperty("degree", note.degree().toString());
            one.addProperty("pitch", note.pitch().toString());
            one.addProperty("count", note.count());
            one.addProperty("bent", note.bent());
            added.add(one);
        });
        json.add("added", added);
        json.add("confidence", share(home.confidence()));
        json.add(
                "runnerUp",
                home.runnerUp().<JsonElement>map(FindingsJson::scale).orElse(JsonNull.INSTANCE));
        return json;
    }

    private static JsonObject scale(HomeScale scale) {
        JsonObject json = new JsonObject();
        json.addProperty("tonic", scale.tonic().toString());
        json.addProperty("scale", scale.scale().toString());
        return json;
    }

    private static JsonArray sections(Analysis analysis) {
        JsonArray sections = new JsonArray();
        analysis.homes().sections().forEach(section -> sections.add(section(analysis.solo(), section)));
        return sections;
    }

    /** A home begins where its first note does. */
    private static JsonObject section(Solo solo, HomeSection section) {
        Note first = solo.notes().get(section.from());
        JsonObject json = new JsonObject();
        json.addProperty("bar", first.bar().number());
        json.addProperty("beat", first.beat().toString());
        scale(section.home().scale()).entrySet().forEach(entry -> json.add(entry.getKey(), entry.getValue()));
        return json;
    }

    private static JsonObject form(Form form) {
        JsonObject json = new JsonObject();
        json.addProperty("name", form.progression().name());
        form.progression().key().ifPresent(key -> json.addProperty("key", key.toString()));
        json.addProperty("startBar", form.start().number());
        return json;
    }

    private static JsonObject summary(Analysis analysis) {
        JsonObject json = new JsonObject();
        json.addProperty("notes", analysis.solo().notes().size());
        json.add(
                "silence",
                share(SilenceShare.of(analysis.solo(), analysis.silences()).toDouble()));
        json.add(
                "climax",
                analysis.climax()
                        .<JsonElement>map(climax -> {
                            JsonObject window = new JsonObject();
                            window.addProperty("bar", climax.bar().number());
                            window.addProperty("bars", climax.bars());
                            return window;
                        })
                        .orElse(JsonNull.INSTANCE));
        return json;
    }

    private static JsonObject finding(Gloss gloss, Report report) {
        Finding finding = gloss.finding();
        Note note = finding.note();
        JsonObject json = new JsonObject();
        json.addProperty("rule", gloss.rule());
        json.addProperty("kind", finding.doubt().isPresent() ? "check" : "mark");
        json.addProperty("note", note.ordinal());
        json.addProperty("lastNote", finding.lastNote().ordinal());
        report.carrierOf(note)
                .filter(carrier -> carrier != note.ordinal())
                .ifPresent(carrier -> json.addProperty("carrier", carrier));
        json.addProperty("bar", note.bar().number());
        json.addProperty("beat", note.beat().toString());
        note.at().ifPresent(at -> {
            json.addProperty("string", at.string());
            json.addProperty("fret", at.fret());
        });
        json.addProperty("line", gloss.line().toString());
        json.add("text", gloss.text().<JsonElement>map(JsonPrimitive::new).orElse(JsonNull.INSTANCE));
        json.addProperty("explanation", finding.explanation());
        json.add("confidence", share(finding.confidence()));
        finding.doubt().ifPresent(doubt -> addDoubt(json, doubt));
        JsonObject values = new JsonObject();
        finding.values().forEach((name, value) -> values.add(name, value(value)));
        json.add("values", values);
        return json;
    }

    private static void addDoubt(JsonObject json, Doubt doubt) {
        json.addProperty("severity", doubt.severity().toString());
        doubt.suggestion().ifPresent(meant -> {
            JsonObject suggestion = new JsonObject();
            meant.at().ifPresent(at -> {
                suggestion.addProperty("string", at.string());
                suggestion.addProperty("fret", at.fret());
            });
            meant.pitch().ifPresent(pitch -> suggestion.addProperty("pitch", pitch.toString()));
            json.add("suggestion", suggestion);
        });
    }

    private static JsonElement value(Object value) {
        if (value instanceof Boolean flag) {
            return new JsonPrimitive(flag);
        }
        if (value instanceof Integer whole) {
            return new JsonPrimitive(whole);
        }
        if (value instanceof Double number) {
            return new JsonPrimitive(plain(new BigDecimal(Double.toString(number))));
        }
        if (value instanceof Collection<?> words) {
            return strings(words);
        }
        return new JsonPrimitive(value.toString());
    }

    private static JsonArray strings(Collection<?> words) {
        JsonArray array = new JsonArray();
        words.forEach(word -> array.add(word.toString()));
        return array;
    }

    /** Three decimals say all that a share can. */
    private static JsonPrimitive share(double value) {
        return new JsonPrimitive(plain(BigDecimal.valueOf(Math.round(value * 1000), 3)));
    }

    /** "2", not "2.0" and not "2E+1". */
    static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
