package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.util.Ids;

/** What is asked about one aid alone, as before it is set up, is answered as it is among all. */
class OneAidAloneTest {

    private static List<Outcome> about(ApproachAid aid, ProjectEvaluation evaluation) {
        List<String> ids = Ids.elements(aid).stream().map(element -> element.getId()).toList();
        return Checks.run(evaluation, rule -> true).outcomes().stream().filter(outcome -> ids.contains(outcome.elementId())).toList();
    }

    /** A second row 19.3 m farther: its path of 3 degrees passes 19.3 tan 3 = 1.011 m higher, more than the metre of the rule. */
    @Test
    void whatStandsBesideItCountsStill() {
        Sample sample = Bases.row();
        ApproachAid second = EcoreUtil.copy(sample.aid());
        Ids.elements(second).forEach(element -> element.setId(null));
        second.getUnits().forEach(unit -> unit.setAlongM(unit.getAlongM() + 19.3));
        sample.host().getAids().add(second);
        Ids.assign(sample.project());
        ProjectEvaluation whole = ProjectEvaluation.of(sample.project(), Optional.empty());
        for (ApproachAid aid : sample.host().getAids()) {
            List<Outcome> alone = about(aid, whole.only(aid));
            assertEquals(about(aid, whole), alone);
            assertEquals(List.of(Verdict.NOT_MET), alone.stream().filter(outcome -> outcome.rule().equals("FAM-05"))
                    .map(Outcome::verdict).toList());
        }
    }
}
