package org.adumbrate.proof.picture;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.open.Edition;

/** Where the pictures of an open sheet come from. Safe for use by several threads. */
public interface PictureSource {
    /** Shows nothing. */
    PictureSource NONE = new PictureSource() {
        @Override
        public Object recipe(Edition edition, PictureView view, boolean coarse) {
            return null;
        }

        @Override
        public Optional<byte[]> held(List<String> ids) {
            return Optional.empty();
        }
    };

    /**
     * Of what a page composes a picture.
     *
     * @param coarse true for one that is there sooner, where there is one
     * @return a value for {@link org.adumbrate.json.Json}; null where nothing is to be shown
     * @throws org.adumbrate.prepare.memory.Superseded if a newer edition took this one's place
     */
    Object recipe(Edition edition, PictureView view, boolean coarse) throws IOException, Refusal;

    /** The arrays that a recipe names, one after the other; nothing where one of them is not held any more. */
    Optional<byte[]> held(List<String> ids);
}
