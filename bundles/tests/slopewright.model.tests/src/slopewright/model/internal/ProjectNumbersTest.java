package slopewright.model.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Which texts of a project file are numbers. */
class ProjectNumbersTest {

    /** The lexical form of xsd:double without its names, XML Schema Part 2, section 3.2.5. */
    private static final Pattern SCHEMA = Pattern.compile("[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?");
    private static final String LETTERS = "+-.eE0019xd ";
    private static final int TEXTS = 200_000;

    @Test
    void theFormIsThatOfTheSchema() {
        Random random = new Random(3);
        for (int i = 0; i < TEXTS; i++) {
            StringBuilder made = new StringBuilder();
            for (int length = random.nextInt(9); length > 0; length--) {
                made.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            String text = made.toString();
            boolean expected = SCHEMA.matcher(text).matches() && Double.isFinite(Double.parseDouble(text));
            assertEquals(expected, ProjectHandler.isNumber(text), "'" + text + "'");
        }
    }

    @Test
    void whatNoDoubleHoldsIsNone() {
        assertFalse(ProjectHandler.isNumber("1e309"));
        assertFalse(ProjectHandler.isNumber("9".repeat(310)));
        assertTrue(ProjectHandler.isNumber("9".repeat(305)));
        assertTrue(ProjectHandler.isNumber("1e308"));
    }
}
