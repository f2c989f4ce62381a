package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import picocli.CommandLine;
import picocli.CommandLine.Parameters;

import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/** Prints a project line by line, each line with its element, for the comparison of versions under version control. */
@CommandLine.Command(name = "text", description = {"Print a project as text, one line a value, in the order of the file.",
        "For readable differences under git: 'git config diff.slopewright.textconv \"slopewright text\"', and the line"
        + " '*.slopewright diff=slopewright' in .gitattributes."})
final class TextCommand extends Command {

    @Parameters(paramLabel = "FILE", description = "project file, or an earlier version of one under any name")
    private Path file;

    @Override
    public Integer call() {
        Project project = ProjectFiles.load(file);
        Streams out = streams();
        for (Identified element : Ids.elements(project)) {
            out.say(Projects.path(element) + " [" + element.getId() + "]");
            for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
                boolean tells = element.eIsSet(feature) && !"id".equals(feature.getName())
                        && !(feature instanceof EReference reference && (reference.isContainment() || reference.isContainer()));
                if (tells) {
                    out.say("    " + feature.getName() + " = " + text(element.eGet(feature)));
                }
            }
        }
        return ExitCodes.OK;
    }

    private static String text(Object value) {
        if (value instanceof List<?> many) {
            return many.stream().map(TextCommand::text).collect(Collectors.joining(", "));
        }
        if (value instanceof EObject element && element instanceof Identified named) {
            return Projects.label(named) + " [" + named.getId() + "]";
        }
        return String.valueOf(value).replace("\n", "\\n").replace("\r", "\\r");
    }
}
