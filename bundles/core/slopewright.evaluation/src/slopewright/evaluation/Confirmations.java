package slopewright.evaluation;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.ValueConfirmation;
import slopewright.model.util.Ids;
import slopewright.standards.RuleSet;
import slopewright.standards.SignedNames;

/**
 * What people said about values of rule sets: that the document says so, or that the value is not to be used. Each is sealed when it is
 * made, over all its entries and the place it was made for, so that one that was changed by a digit, or copied to another value, another
 * edition or the project of another aerodrome, says nothing until somebody says it again. A seal tells a slip from what was signed; it is
 * no secret, and no defence against one who makes a new one.
 */
public final class Confirmations {
    private static final List<EAttribute> SEALED = Literals.VALUE_CONFIRMATION.getEAllAttributes().stream()
            .filter(attribute -> attribute != Literals.VALUE_CONFIRMATION__SHA256 && !attribute.isID())
            .sorted(Comparator.comparing(EAttribute::getName)).toList();

    private Confirmations() {
    }

    /** Returns whether a project has the entries and the seal of somebody who looked: a source, the name of a person, and a date. */
    public static boolean isWhole(ValueConfirmation confirmation) {
        return isGiven(confirmation.getSource()) && isGiven(confirmation.getDate()) && SignedNames.isName(confirmation.getPerson());
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }

    /** Returns whether a confirmation is as it was sealed, for the project that holds it. */
    public static boolean isSealed(ValueConfirmation confirmation) {
        return confirmation.eContainer() instanceof Project project && seal(project, confirmation).equals(confirmation.getSha256());
    }

    /**
     * Seals a confirmation for a project, which need not hold it yet.
     *
     * @param project      the project
     * @param confirmation the confirmation, changed
     * @return the confirmation
     */
    public static ValueConfirmation sealed(Project project, ValueConfirmation confirmation) {
        confirmation.setSha256(seal(project, confirmation));
        return confirmation;
    }

    /** Returns what is said of values in a project and is not as it was sealed, in document order. */
    public static List<ValueConfirmation> unsealed(Project project) {
        return project.getConfirmations().stream().filter(confirmation -> !isSealed(confirmation)).toList();
    }

    /**
     * Keeps that a second person held a confirmation against the document, and seals it as it is now.
     *
     * @param project      the project
     * @param confirmation a confirmation in it, changed
     * @param person       who signs it off, not who confirmed it
     * @param date         when, year, month, day
     * @throws IllegalArgumentException where the person is the one who confirmed it, or nobody
     */
    public static void signOff(Project project, ValueConfirmation confirmation, String person, String date) {
        if (!SignedNames.isName(person) || SignedNames.isSame(person, confirmation.getPerson())) {
            throw new IllegalArgumentException(confirmation.getId() + " was confirmed by " + confirmation.getPerson()
                    + "; a second person signs it off");
        }
        confirmation.setSecondPerson(person);
        confirmation.setSecondDate(date);
        sealed(project, confirmation);
    }

    /** Returns what is said of a value as lines, to hold it against the document. */
    public static List<String> entries(ValueConfirmation confirmation) {
        return SEALED.stream().filter(confirmation::eIsSet).map(attribute -> attribute.getName() + " = "
                + EcoreUtil.convertToString(attribute.getEAttributeType(), confirmation.eGet(attribute)).replace("\\", "\\\\")
                .replace("\n", "\\n").replace("\r", "\\r")).toList();
    }

    /** Adds a confirmation to a project, sealed, instead of those of the same value that it has. */
    public static void keep(Project project, ValueConfirmation confirmation) {
        project.getConfirmations().removeIf(old -> isSameValue(old, confirmation));
        project.getConfirmations().add(sealed(project, confirmation));
        Ids.assign(project);
    }

    /** Returns whether two confirmations speak of one value of one rule set. */
    public static boolean isSameValue(ValueConfirmation one, ValueConfirmation other) {
        return String.valueOf(one.getValueKey()).equals(String.valueOf(other.getValueKey()))
                && ProjectRules.stored(String.valueOf(one.getRuleSetKey())).equals(ProjectRules.stored(String.valueOf(other
                        .getRuleSetKey())));
    }

    /** Returns what a project says of a value of a rule set and counts, empty where it says nothing. */
    public static Optional<ValueConfirmation> of(Project project, RuleSet rules, String key) {
        return project.getConfirmations().stream().filter(found -> key.equals(found.getValueKey()) && ProjectRules.counts(rules, found))
                .findFirst();
    }

    private static String seal(Project project, ValueConfirmation confirmation) {
        List<String> lines = new ArrayList<>(List.of("project " + project.getId(), "aerodrome " + place(project.getAerodrome())));
        lines.addAll(entries(confirmation));
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(String.join("\n", lines)
                    .getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** An aerodrome is known by its identifier; while it has none, by its name. */
    private static String place(Aerodrome aerodrome) {
        if (aerodrome == null) {
            return "";
        }
        return isGiven(aerodrome.getIdentifier()) ? aerodrome.getIdentifier() : String.valueOf(aerodrome.getName());
    }
}
