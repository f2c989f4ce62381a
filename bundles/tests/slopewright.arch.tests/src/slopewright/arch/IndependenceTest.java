package slopewright.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** The second implementation reads nothing of the first, or it would be no witness. */
class IndependenceTest {

    private static final Pattern PRODUCT = Pattern.compile("(?s).*\\bslopewright\\.(?!witness\\b).*");

    @Test
    void theWitnessNamesNothingOfTheProduct() {
        List<Path> files = SourceTree.files().stream()
                .filter(file -> SourceTree.relative(file).contains("/src/slopewright/witness/")).toList();
        assertFalse(files.isEmpty());
        assertEquals(List.of(), files.stream().filter(file -> PRODUCT.matcher(SourceTree.text(file)).matches())
                .map(SourceTree::relative).toList());
    }
}
