package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

import slopewright.geometry.Decimals;
import slopewright.geometry.Lengths;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.model.util.ValueRange;

/** Enters what is known of elements of a project, as a property sheet does. */
@CommandLine.Command(name = "enter", sortOptions = false,
        description = "Enter values of elements: the id, a dot, the attribute as the file has it, an equals sign, the value. Nothing "
                + "behind the sign takes a value away. All are entered, or none.")
final class EnterCommand extends Command {

    @Parameters(index = "0", paramLabel = "FILE", description = "project file")
    private Path file;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "ID.ATTRIBUTE=VALUE",
            description = "what is entered, as helipad-1.fatoLengthM=28 or light-unit-1.frangible=true")
    private List<String> entries;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() {
        output.ending(List.of(ProjectFile.EXTENSION));
        output.check();
        Project project = ProjectFiles.load(file);
        entries.forEach(entry -> enter(project, entry));
        output.write(project);
        return ExitCodes.OK;
    }

    private static void enter(Project project, String entry) {
        int sign = entry.indexOf('=');
        int dot = sign < 0 ? -1 : entry.lastIndexOf('.', sign);
        if (dot <= 0) {
            throw new UsageException("'" + entry + "' is not of the form ID.ATTRIBUTE=VALUE");
        }
        String id = entry.substring(0, dot);
        Identified element = Ids.find(project, id).orElseThrow(() -> new UsageException("there is no element '" + id + "'"));
        String name = entry.substring(dot + 1, sign);
        EAttribute attribute = element.eClass().getEAllAttributes().stream().filter(EnterCommand::isEntry)
                .filter(each -> each.getName().equals(name)).findFirst().orElseThrow(() -> new UsageException(id
                        + " has no attribute '" + name + "'; it has " + String.join(", ", element.eClass().getEAllAttributes().stream()
                                .filter(EnterCommand::isEntry).map(EAttribute::getName).toList())));
        element.eSet(attribute, value(element, attribute, entry.substring(sign + 1).strip(), id + "." + name));
    }

    private static boolean isEntry(EAttribute attribute) {
        return attribute.isChangeable() && !attribute.isID() && !attribute.isMany();
    }

    private static Object value(Identified element, EAttribute attribute, String text, String what) {
        if (text.isEmpty()) {
            return attribute.getDefaultValue();
        }
        if (attribute.getEAttributeType() instanceof EEnum choices) {
            return choices.getELiterals().stream().filter(literal -> literal.getName().equalsIgnoreCase(text.replace('-', '_'))).findFirst()
                    .map(EEnumLiteral::getInstance).orElseThrow(() -> new UsageException(what + ": '" + text + "' is none of "
                            + String.join(", ", choices.getELiterals().stream().map(literal -> literal.getName().toLowerCase(Locale.ROOT)
                                    .replace('_', '-')).toList())));
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == Boolean.class) {
            if (!"true".equals(text) && !"false".equals(text)) {
                throw new UsageException(what + ": '" + text + "' is neither true nor false");
            }
            return Boolean.valueOf(text);
        }
        if (Number.class.isAssignableFrom(type)) {
            double number = number(attribute, text, what);
            ValueRange.of(element.eClass(), attribute).filter(range -> !range.contains(number)).ifPresent(range -> {
                throw new UsageException(String.format(Locale.ROOT, "%s: %s lies outside %s to %s", what, text, range.least(), range
                        .most()));
            });
            return type == Integer.class ? (Object) whole(number, text, what) : (Object) number;
        }
        return text;
    }

    private static double number(EAttribute attribute, String text, String what) {
        try {
            return attribute.getName().endsWith("M") ? Lengths.parse(text) : Decimals.parse(text);
        } catch (IllegalArgumentException e) {
            throw new UsageException(what + ": " + e.getMessage());
        }
    }

    private static Integer whole(double number, String text, String what) {
        if (number != Math.rint(number)) {
            throw new UsageException(what + ": '" + text + "' is no whole number");
        }
        return (int) number;
    }
}
