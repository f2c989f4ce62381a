package slopewright.ui.profile.internal.section;

import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.TextMeasure;
import slopewright.drawing.section.Section;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.Attempt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;

/** What the section shows of a document: the chosen aid as it was evaluated, and the chosen aeroplanes. */
public final class SectionSource {

    /** Stands where no aid is chosen; nobody reads it. */
    private static final Message NOTHING = Message.of("plain", Words.name(""));

    private final TextMeasure measure;
    private Optional<ProjectDocument> document = Optional.empty();
    private Optional<ApproachAid> aid = Optional.empty();
    private Optional<String> chosenGroupId = Optional.empty();
    private Attempt<Section> section = Attempt.failure(NOTHING);

    /** Makes a source without a document, for letters of a screen. */
    public SectionSource(TextMeasure measure) {
        this.measure = measure;
    }

    /** Looks at another document. */
    public void follow(Optional<ProjectDocument> newDocument) {
        document = newDocument;
        refresh();
    }

    /** Reads the document anew. */
    public void refresh() {
        aid = document.flatMap(open -> open.viewState().aid());
        section = aid.map(chosen -> document.orElseThrow().evaluation(chosen).then(found -> Attempt.of(() -> of(found))))
                .orElseGet(() -> Attempt.failure(NOTHING));
    }

    /**
     * Returns the section of an aid as it stands, or as it is tried out.
     *
     * @throws slopewright.siting.SitingException where it has no layout or no place
     */
    Section of(AidEvaluation evaluation) {
        DrawnAid drawn = DrawnAid.of(evaluation, MessageTexts.renderer());
        return new Section(drawn, aeroplanes(), measure);
    }

    /** Returns the document. */
    public Optional<ProjectDocument> document() {
        return document;
    }

    /** Returns the chosen aid. */
    public Optional<ApproachAid> aid() {
        return aid;
    }

    /** Returns the runway end or approach direction of the aid. */
    public Optional<ApproachHost> host() {
        return aid.flatMap(Projects::host);
    }

    /** Returns every aid of the project. */
    public List<ApproachAid> aids() {
        return document.map(open -> Projects.aids(open.project())).orElse(List.of());
    }

    /** Returns the section, empty where there is no aid or it cannot be worked out. */
    public Optional<Section> section() {
        return section.value();
    }

    /** Returns why the section of the aid cannot be worked out. */
    public Optional<String> problem() {
        return aid.isEmpty() ? Optional.empty() : section.reason().map(MessageTexts::of);
    }

    /** Returns the aeroplanes in regular use at the aid whose eye-to-wheel height is known. */
    public List<AeroplaneGroup> groups() {
        return host().map(end -> end.getRegularGroups().stream().filter(group -> group.getEyeToWheelM() != null).toList())
                .orElse(List.of());
    }

    /** Returns the chosen aeroplanes, else the most demanding ones. */
    public Optional<AeroplaneGroup> aeroplanes() {
        return chosenGroupId.flatMap(id -> groups().stream().filter(group -> id.equals(group.getId())).findFirst())
                .or(() -> host().flatMap(AidRequests::mostDemanding));
    }

    /** Chooses aeroplanes. */
    public void choose(AeroplaneGroup group) {
        chosenGroupId = Optional.ofNullable(group.getId());
        refresh();
    }
}
