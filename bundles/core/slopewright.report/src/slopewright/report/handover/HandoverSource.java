package slopewright.report.handover;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.checks.Checks;
import slopewright.checks.Standing;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.report.Drawings;
import slopewright.siting.SitingException;

/** What every file of a hand-over is made of: a project, its one evaluation and its one check, worked out when first asked for. */
public final class HandoverSource {

    private final Project project;
    private ProjectEvaluation evaluation;
    private Drawings.Checked checked;
    private MadeFrom made;

    /** Starts from a project, which must not change while the files are made. */
    public HandoverSource(Project project) {
        this.project = Objects.requireNonNull(project);
    }

    /** Returns the project. */
    public Project project() {
        return project;
    }

    /**
     * Returns the evaluation of the project under the rule sets that it and its aids name.
     *
     * @throws IllegalArgumentException where a rule set or an override is unknown; the message says which
     */
    public ProjectEvaluation evaluation() {
        if (evaluation == null) {
            evaluation = ProjectEvaluation.of(project, Optional.empty());
        }
        return evaluation;
    }

    /** Returns what the rules say of that evaluation, as the report and every sheet have it. */
    public Drawings.Checked checked() {
        if (checked == null) {
            checked = new Drawings.Checked(evaluation(), Checks.run(evaluation(), rule -> true));
        }
        return checked;
    }

    /** Returns what the files about the whole project are made from, with the verdict of that check. */
    public MadeFrom madeFrom() {
        if (made == null) {
            made = MadeFrom.of(evaluation()).judged(Standing.of(checked().result()).words());
        }
        return made;
    }

    /** Returns what the files about one aid are made from: the same under the rule set of the aid, with the verdict on the aid. */
    public MadeFrom madeFrom(AidEvaluation aid) {
        return madeFrom().under(aid.rules()).judged(Standing.of(List.of(aid), checked().result()).words());
    }

    /**
     * Returns the evaluation of one aid.
     *
     * @param id the id of an aid
     * @throws SitingException          where it is no longer part of the project
     * @throws IllegalArgumentException as for the whole evaluation
     */
    public AidEvaluation aid(String id) {
        ApproachAid aid = Ids.find(project, id).filter(ApproachAid.class::isInstance).map(ApproachAid.class::cast)
                .orElseThrow(() -> new SitingException(Message.of("evaluation.refused.aid-gone", Words.name(id))));
        return evaluation().aid(aid);
    }
}
