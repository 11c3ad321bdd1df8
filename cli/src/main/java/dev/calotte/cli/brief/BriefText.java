package dev.calotte.cli.brief;

import dev.calotte.cli.folder.Sha256;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A brief as it is written, and what it says. */
public final class BriefText {

    private static final String EXAMPLE =
            "Write at least dome: { breakdown: 3 } in one line and size: { radius: 3 m } in the next.";

    private static final Node NOTHING = new Node.Text(new Place(1, 1), "");

    private final Optional<Node> root;
    private final String source;
    private final Problems problems = new Problems();
    private final Explanation explanation;
    private final OutlineFiles outlines;
    private final String sha256;

    private BriefText(String name, BriefFile.Content content, OutlineFiles outlines) {
        String text = content.text();
        this.sha256 = content.sha256();
        this.outlines = outlines;
        this.source = text.lines().collect(Collectors.joining("\n", "", "\n"));
        this.root = TreeReader.read(text, problems);
        this.explanation = new Explanation(name, text.lines().toList(), root);
    }

    /**
     * Reads a file.
     *
     * @param path a regular file of at most 256 KiB, UTF-8 with or without a byte order mark; other files that it names lie
     *     beside it
     * @return its text, not yet understood
     * @throws CalotteException if there is no such file, or it is not a text
     */
    public static BriefText read(Path path) {
        return new BriefText(path.toString(), BriefFile.read(path), OutlineFiles.beside(path));
    }

    /**
     * Takes a text, which can name no other files.
     *
     * @param name what to call it in messages
     * @param text the text
     * @return the same, not yet understood
     * @throws CalotteException if it holds characters that no text file has
     */
    public static BriefText of(String name, String text) {
        String sha256 = Sha256.of(text.getBytes(StandardCharsets.UTF_8));
        return new BriefText(name, new BriefFile.Content(BriefFile.checked(name, text), sha256), OutlineFiles.none());
    }

    /**
     * The text as it is written.
     *
     * @return its lines, each with a line feed
     */
    public String source() {
        return source;
    }

    /**
     * What tells this brief from any other.
     *
     * @return the SHA-256 of the bytes of its file, 64 hexadecimal digits
     */
    public String sha256() {
        return sha256;
    }

    /**
     * What the brief asks for.
     *
     * @return a project whose values are sound each by itself
     * @throws CalotteException with every problem that was found, in the order of the text; what is missing altogether
     *     comes last
     */
    public Project project() {
        Problems found = problems.copy();
        Node node = root.orElse(NOTHING);
        if (!(node instanceof Node.Mapping mapping)) {
            throw without(node, found);
        }
        Project project = ProjectReader.read(mapping, found, outlines);
        found.throwIfAny();
        return project;
    }

    /** Says that there is nothing to read, unless it was said already why. */
    private static CalotteException without(Node node, Problems found) {
        if (found.isEmpty()) {
            boolean empty = node.equals(new Node.Text(node.place(), ""));
            Refusal refusal = empty
                    ? new Refusal(Code.MISSING, "the brief is empty.", EXAMPLE)
                    : Refusal.wrong("a brief begins with a key: " + Seen.sort(node), EXAMPLE);
            found.add(Optional.of(node.place()), "", refusal);
        }
        return found.thrown();
    }

    /**
     * Tells of a problem in lines for a terminal: what and where, the mend, and the line of the brief with a caret. The
     * place is the key that the problem names, or the nearest key above it, or none.
     *
     * @param problem a problem of this brief, found here or by whatever computed with it
     * @return two lines or four, without line ends
     */
    public List<String> explain(Problem problem) {
        return explanation.of(problem);
    }
}
