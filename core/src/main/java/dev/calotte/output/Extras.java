package dev.calotte.output;

import dev.calotte.model.ModelSpec;
import dev.calotte.solid.JigSpec;
import dev.calotte.solid.PrintSpec;
import java.util.Optional;

/**
 * What is made beside the dome itself.
 *
 * @param print how a solid model is printed
 * @param model what is drawn of a model to cut
 * @param jigs what jigs are made for
 */
public record Extras(Optional<PrintSpec> print, Optional<ModelSpec> model, Optional<JigSpec> jigs) {

    /** No models and no jigs. */
    public static final Extras NONE = new Extras(Optional.empty(), Optional.empty(), Optional.empty());
}
