package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

/** The formats of survey files are services: each stands in the list of services once, and no two take the same ending. */
class SurveyFormatTest {

    @Test
    void everyServiceIsFoundInItsOrder() throws IOException {
        try (InputStream in = SurveyFormat.class.getResourceAsStream("/META-INF/services/" + SurveyFormat.class.getName())) {
            List<String> listed = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
            assertEquals(listed, SurveyFile.formats().stream().map(format -> format.getClass().getName()).toList());
        }
    }

    @Test
    void endingsAreLowerCaseAndOfOneFormat() {
        Set<String> seen = new HashSet<>();
        for (SurveyFormat format : SurveyFile.formats()) {
            assertFalse(format.name().isBlank());
            for (String ending : format.endings()) {
                assertTrue(ending.matches("[a-z0-9]+"), ending);
                assertTrue(seen.add(ending), ending);
            }
        }
        assertEquals(List.copyOf(SurveyFile.endings()).size(), seen.size());
    }
}
