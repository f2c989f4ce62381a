package slopewright.ui.profile.internal.section;

import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.section.SectionLive;
import slopewright.drawing.section.SectionObstacles;
import slopewright.drawing.section.SectionWords;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.ProjectRules;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;
import slopewright.ui.document.ProjectDocument;

/** What the section shows of a document: the chosen aid as its units stand, its obstacles, and the chosen aeroplanes. */
public final class SectionSource {

    private final SectionWords words;
    private Optional<ProjectDocument> document = Optional.empty();
    private Optional<ApproachAid> aid = Optional.empty();
    private Optional<String> chosenGroupId = Optional.empty();
    private Optional<SiteFrame> frame = Optional.empty();
    private Optional<SectionLive> live = Optional.empty();
    private Optional<String> problem = Optional.empty();
    private List<SectionObstacles.Surveyed> surveyed = List.of();

    /** Makes a source without a document. */
    public SectionSource(SectionWords words) {
        this.words = words;
    }

    /** Looks at another document. */
    public void follow(Optional<ProjectDocument> newDocument) {
        document = newDocument;
        refresh();
    }

    /** Reads the document anew. */
    public void refresh() {
        aid = document.flatMap(one -> one.viewState().aid());
        live = Optional.empty();
        problem = Optional.empty();
        if (aid.isPresent()) {
            try {
                SiteFrame fresh = SiteFrame.of(Projects.host(aid.get()).orElseThrow());
                frame = Optional.of(fresh);
                surveyed = project().getAerodrome().getObstacles().stream()
                        .flatMap(obstacle -> SectionObstacles.survey(obstacle, fresh).stream()).toList();
                live = Optional.of(of(AidLayouts.evaluate(aid.get(), rules())));
            } catch (SitingException | IllegalArgumentException e) {
                problem = Optional.of(String.valueOf(e.getMessage()));
            }
        }
    }

    private Project project() {
        return document.orElseThrow().project();
    }

    /** Returns the rule set that the aid is laid out under. */
    RuleSet rules() {
        return ProjectRules.of(project(), aid.orElseThrow(), Optional.empty());
    }

    /** Returns the section of a layout that is tried out. */
    SectionLive of(Siting siting) {
        DrawnAid drawn = new DrawnAid(project(), host().orElseThrow(), aid.orElseThrow(), siting, frame.orElseThrow());
        return new SectionLive(drawn, SectionObstacles.of(surveyed, siting.surface().map(SurfacePlan::geometry)), aeroplanes(), words);
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
        return document.map(one -> Projects.aids(one.project())).orElse(List.of());
    }

    /** Returns the section, empty where there is no aid or it can not be worked out. */
    public Optional<SectionLive> live() {
        return live;
    }

    /** Returns why the section of the aid can not be worked out. */
    public Optional<String> problem() {
        return problem;
    }

    /** Returns the aeroplanes in regular use at the aid whose eye-to-wheel height is known. */
    public List<AeroplaneGroup> groups() {
        return host().map(one -> one.getRegularGroups().stream().filter(group -> group.getEyeToWheelM() != null).toList())
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
