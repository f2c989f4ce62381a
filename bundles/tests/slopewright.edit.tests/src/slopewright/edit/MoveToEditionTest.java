package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.Editions;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;

/** What names the fifth edition, or no edition as older files do, moves to the ninth as one step; nothing else does. */
class MoveToEditionTest {

    private static Project older() {
        return DemoProjects.load(DemoProjects.olderEdition());
    }

    @ParameterizedTest
    @ValueSource(strings = {"icao", "icao:5th"})
    void projectAndAidsMoveAsOneStep(String named) {
        Project project = older();
        project.setRuleSetKey(named);
        List<ApproachAid> aids = Projects.aids(project);
        aids.forEach(aid -> aid.setRuleSetKey(null));
        aids.get(0).setRuleSetKey(named);
        aids.get(1).setRuleSetKey("faa");
        int confirmed = project.getConfirmations().size();
        RecordedEdit edit = MoveToEdition.of(project);
        edit.execute();
        assertEquals("icao:9th", project.getRuleSetKey());
        assertEquals("icao:9th", aids.get(0).getRuleSetKey());
        assertEquals("faa", aids.get(1).getRuleSetKey());
        assertTrue(aids.subList(2, aids.size()).stream().allMatch(aid -> aid.getRuleSetKey() == null));
        assertEquals(confirmed, project.getConfirmations().size(), "nothing that a person said is taken away");
        assertEquals(List.of(), Editions.moves(project));
        edit.undo();
        assertEquals(named, project.getRuleSetKey());
        assertEquals(named, aids.get(0).getRuleSetKey());
        edit.redo();
        assertEquals("icao:9th", project.getRuleSetKey());
    }

    /** 49 confirmations of the site are for icao:5th, as its own test of the rules counts them. */
    @Test
    void whatLapsesIsCounted() {
        Project project = older();
        assertEquals(49, Editions.lapsing(project, Editions.moves(project)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"icao:9th", "icao:later", "easa", "casa:guide", "faa", "faa:2010", "faa:2022", "our-rules", "nonsense:5th"})
    void whatNamesNoOlderEditionStays(String named) {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        project.setRuleSetKey(named);
        assertEquals(List.of(), Editions.moves(project));
        project.setRuleSetKey(null);
        assertEquals(List.of(), Editions.moves(project), "a project that names none is under the usual edition");
    }
}
