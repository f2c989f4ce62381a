package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import slopewright.model.GroundLevel;
import slopewright.model.Obstacle;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;

/** What was taken of a survey file comes and goes in one step. */
class TakeSurveyTest {

    private final Sample sample = new Sample();

    @Test
    void everythingOfAFileComesAndGoesTogether() {
        Obstacle first = SlopewrightFactory.eINSTANCE.createObstacle();
        Obstacle second = SlopewrightFactory.eINSTANCE.createObstacle();
        first.setId("twice");
        second.setId("twice");
        GroundLevel level = SlopewrightFactory.eINSTANCE.createGroundLevel();
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        int obstacles = sample.aerodrome.getObstacles().size();
        int levels = sample.aerodrome.getGroundLevels().size();
        EditHarness.cycle(sample.project, TakeSurvey.of("Import field book", sample.project, List.of(first, second, level, block)), () -> {
            assertEquals(obstacles + 2, sample.aerodrome.getObstacles().size());
            assertEquals(levels + 1, sample.aerodrome.getGroundLevels().size());
            assertEquals(List.of(block), sample.project.getSurveyBlocks());
            assertEquals(2, Set.of(first.getId(), second.getId()).size());
        });
    }

    @Test
    void whatIsSomewhereAlreadyOrNoSurveyIsRefused() {
        assertThrows(EditException.class, () -> TakeSurvey.of("", sample.project, List.of(sample.end)));
        assertThrows(EditException.class, () -> TakeSurvey.of("", SlopewrightFactory.eINSTANCE.createProject(), List.of()));
    }
}
