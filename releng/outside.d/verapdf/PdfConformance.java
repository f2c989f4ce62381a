import java.io.FileInputStream;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * Has veraPDF look at every PDF of a folder. Documents (report, card, commissioning sheet) have to keep PDF/A-2a and PDF/UA-1; drawings
 * promise neither, and one of them shows that the validator refuses what does not keep them.
 */
final class PdfConformance {

    private static final List<PDFAFlavour> PROMISED = List.of(PDFAFlavour.PDFA_2_A, PDFAFlavour.PDFUA_1);
    private static final int MOST_REASONS = 3;

    private PdfConformance() {
    }

    /** Runs with the folder and prints a line for each check. */
    public static void main(String[] args) throws Exception {
        Logger.getLogger("").setLevel(Level.OFF);
        VeraGreenfieldFoundryProvider.initialise();
        boolean failed = false;
        int documents = 0;
        boolean refused = false;
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(args[0]))) {
            files = all.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
        }
        for (Path file : files) {
            boolean document = file.getFileName().toString().matches("(report|letter|briefing|card|commission|handover|faults).*");
            if (!document && refused) {
                continue;
            }
            documents += document ? 1 : 0;
            for (PDFAFlavour flavour : PROMISED) {
                ValidationResult result = validate(file, flavour);
                boolean as = result.isCompliant() == document;
                failed |= !as;
                System.out.printf("%s pdf: %s %s %s (%d checks)%s%n", as ? "ok" : "FAILED", file.getFileName(), result.isCompliant()
                        ? "keeps" : "does not keep", flavour == PDFAFlavour.PDFUA_1 ? "PDF/UA-1" : "PDF/A-2a", result.getTotalAssertions(),
                        document ? reasons(result) : ", and is told from a document");
            }
            refused |= !document;
        }
        if (documents == 0 || !refused) {
            System.out.println("FAILED pdf: the folder holds no document or no drawing");
            failed = true;
        }
        System.exit(failed ? 1 : 0);
    }

    private static ValidationResult validate(Path file, PDFAFlavour flavour) throws Exception {
        try (InputStream in = new FileInputStream(file.toFile()); PDFAParser parser = Foundries.defaultInstance().createParser(in, flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser);
        }
    }

    private static String reasons(ValidationResult result) {
        Map<String, Integer> reasons = new TreeMap<>();
        result.getTestAssertions().stream().filter(one -> one.getStatus() == TestAssertion.Status.FAILED)
                .forEach(one -> reasons.merge(one.getRuleId().getClause() + ": " + one.getMessage(), 1, Integer::sum));
        return reasons.isEmpty() ? "" : ": " + reasons.entrySet().stream().limit(MOST_REASONS).map(one -> one.getValue() + " times "
                + one.getKey().replaceAll("\\s+", " ")).toList();
    }
}
