package org.fretgloss.annotator.read;

import jakarta.xml.bind.JAXBElement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.audiveris.proxymusic.Articulations;
import org.audiveris.proxymusic.Bend;
import org.audiveris.proxymusic.Glissando;
import org.audiveris.proxymusic.HammerOnPullOff;
import org.audiveris.proxymusic.Harmonic;
import org.audiveris.proxymusic.Mute;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.NoteheadValue;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.OtherNotation;
import org.audiveris.proxymusic.OtherPlacementText;
import org.audiveris.proxymusic.OtherPlay;
import org.audiveris.proxymusic.Slide;
import org.audiveris.proxymusic.Slur;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.Technical;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.WavyLine;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;

/** What a note element says about its playing. */
final class MarksReader {

    private final Set<Technique> techniques = EnumSet.noneOf(Technique.class);
    private final List<BendStep> bends = new ArrayList<>();
    private Optional<Fraction> bendText = Optional.empty();
    private final Set<Link> begins = EnumSet.noneOf(Link.class);
    private final Set<Link> ends = EnumSet.noneOf(Link.class);
    private boolean tapped;
    private boolean trilled;
    private Optional<HarmonicTone> harmonic = Optional.empty();

    private final Unread unread;

    private MarksReader(Unread unread) {
        this.unread = unread;
    }

    static Marks read(Note note, Unread unread) {
        return new MarksReader(unread).marks(note);
    }

    private Marks marks(Note note) {
        if (note.getNotehead() != null && note.getNotehead().getValue() == NoteheadValue.X) {
            techniques.add(Technique.DEAD);
        }
        if (note.getPlay() != null) {
            note.getPlay().getIpaOrMuteOrSemiPitched().forEach(this::play);
        }
        for (Notations notations : note.getNotations()) {
            notations.getTiedOrSlurOrTuplet().forEach(this::notation);
        }
        if (trilled) {
            // The wavy line after a trill sign only says how long the trill lasts.
            begins.remove(Link.VIBRATO);
            ends.remove(Link.VIBRATO);
            techniques.remove(Technique.VIBRATO);
        }
        return new Marks(techniques, bends, bendText, begins, ends, tapped, harmonic);
    }

    private void play(Object item) {
        if (item == Mute.PALM) {
            techniques.add(Technique.PALM_MUTE);
        } else if (item instanceof OtherPlay other) {
            words(other.getValue());
        }
    }

    private void notation(Object item) {
        if (item instanceof Tied tied && tied.getType() == TiedType.LET_RING) {
            techniques.add(Technique.LET_RING);
        } else if (item instanceof Slur slur) {
            line(Link.SLUR, slur.getType());
        } else if (item instanceof Slide slide) {
            link(Link.SLIDE, slide.getType());
        } else if (item instanceof Glissando glissando) {
            link(Link.SLIDE, glissando.getType());
        } else if (item instanceof Technical technical) {
            technical.getUpBowOrDownBowOrHarmonic().forEach(this::technical);
        } else if (item instanceof Articulations articulations) {
            articulations.getAccentOrStrongAccentOrStaccato().forEach(this::articulation);
        } else if (item instanceof Ornaments ornaments) {
            ornaments.getTrillMarkOrTurnOrDelayedTurn().forEach(this::ornament);
        } else if (item instanceof OtherNotation other) {
            words(other.getValue());
        }
    }

    private void technical(JAXBElement<?> element) {
        Object value = element.getValue();
        switch (element.getName().getLocalPart()) {
            case "hammer-on" -> legato(Link.HAMMER_ON, value);
            case "pull-off" -> legato(Link.PULL_OFF, value);
            case "tap" -> tapped = true;
            case "bend" -> bend(value);
            case "harmonic" -> harmonic(value);
            case "other-technical" -> words(value);
            default -> {
                // Fingerings, bowings and the like say nothing about the sound of a solo.
            }
        }
    }

    private void articulation(JAXBElement<?> element) {
        switch (element.getName().getLocalPart()) {
            case "staccato", "staccatissimo" -> techniques.add(Technique.STACCATO);
            case "scoop", "plop" -> techniques.add(Technique.SLIDE_IN);
            case "doit", "falloff" -> techniques.add(Technique.SLIDE_OUT);
            case "other-articulation" -> words(element.getValue());
            default -> {
                // Accents and breaths change neither pitch nor length.
            }
        }
    }

    private void ornament(JAXBElement<?> element) {
        switch (element.getName().getLocalPart()) {
            case "trill-mark" -> trilled = true;
            case "wavy-line" -> waves(element.getValue());
            case "other-ornament" -> words(element.getValue());
            default -> {
                // Turns and mordents are written out in a finished transcription.
            }
        }
    }

    private void waves(Object item) {
        if (item instanceof WavyLine waves) {
            line(Link.VIBRATO, waves.getType());
            if (waves.getType() == StartStopContinue.START) {
                techniques.add(Technique.VIBRATO);
            }
        }
    }

    private void line(Link link, @Nullable StartStopContinue type) {
        if (type == StartStopContinue.START) {
            begins.add(link);
        } else if (type == StartStopContinue.STOP) {
            ends.add(link);
        }
    }

    private void bend(Object item) {
        if (!(item instanceof Bend bend)) {
            return;
        }
        if (bend.getWithBar() != null) {
            techniques.add(Technique.WITH_BAR);
        }
        if (unread.marks(bend)) {
            return;
        }
        BendStep.Kind kind = BendStep.Kind.BEND;
        if (bend.getPreBend() != null) {
            kind = BendStep.Kind.PRE_BEND;
        } else if (bend.getRelease() != null) {
            kind = BendStep.Kind.RELEASE;
        }
        bends.add(new BendStep(semitones(bend.getBendAlter()), kind));
    }

    /** A width that is absent becomes 0, which is no bend; the reader of bends says so. */
    private static Fraction semitones(@Nullable BigDecimal alter) {
        return Numbers.fraction(alter).orElse(Fraction.ZERO);
    }

    private void harmonic(Object item) {
        if (!(item instanceof Harmonic mark)) {
            return;
        }
        techniques.add(Technique.HARMONIC);
        if (mark.getSoundingPitch() != null) {
            harmonic = Optional.of(HarmonicTone.HEARD);
        } else if (mark.getTouchingPitch() != null) {
            harmonic = Optional.of(HarmonicTone.TOUCHED);
        } else {
            harmonic = Optional.of(mark.getArtificial() != null ? HarmonicTone.FRETTED : HarmonicTone.NATURAL);
        }
    }

    private void legato(Link link, Object item) {
        if (item instanceof HammerOnPullOff mark) {
            link(link, mark.getType());
        }
    }

    private void link(Link link, @Nullable StartStop type) {
        if (type == StartStop.START) {
            begins.add(link);
        } else if (type == StartStop.STOP) {
            ends.add(link);
        }
    }

    private void words(Object item) {
        if (item instanceof OtherPlacementText text) {
            words(text.getValue());
        }
    }

    private void words(@Nullable String text) {
        PlayingWords.technique(text).ifPresent(techniques::add);
        tapped |= PlayingWords.isTap(text);
        bendText = bendText.or(() -> BendText.semitones(text));
    }
}
