package slopewright.exchange.survey;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyReading.Form;
import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;

/** Imports a survey file as the command line does: whole, or not at all. */
public final class Surveys {
    /** What is said of elevations of which nobody says in which vertical datum they are. */
    static final String NO_DATUM = "nobody says in which vertical datum the elevations of the file are; they are taken in that of the "
            + "aerodrome, 'Harrow Vale local mean sea level (invented)'";

    private Surveys() {
    }

    static SurveyReading obstacles(Project project, Path file, SurveyOrigin origin) throws ExchangeException {
        return whole(project, file, origin, Form.OBSTACLES);
    }

    static SurveyReading groundLevels(Project project, Path file, SurveyOrigin origin) throws ExchangeException {
        return whole(project, file, origin, Form.GROUND_LEVELS);
    }

    /** Adds a block to a project, and returns its reading. */
    public static SurveyReading block(Project project, Path file, SurveyOrigin origin) throws ExchangeException {
        return whole(project, file, origin, Form.BLOCK);
    }

    /** Returns the name of the file of a block that is added. */
    public static String fileName(SurveyReading block) {
        return ((SurveyBlock) block.elements().get(0)).getPath();
    }

    /** Returns what the file of a block that is added holds. */
    public static byte[] bytes(SurveyReading block) {
        return block.blockBytes().orElseThrow();
    }

    /** Returns what a reading says, in English. */
    static List<String> english(List<Message> said) {
        return said.stream().map(Message::english).toList();
    }

    private static SurveyReading whole(Project project, Path file, SurveyOrigin origin, Form form) throws ExchangeException {
        SurveyReading reading = SurveyReading.of(project, file, origin, Optional.empty(), form);
        reading.refuseFaults(false);
        reading.addTo(project);
        return reading;
    }
}
