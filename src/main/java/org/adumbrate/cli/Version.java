package org.adumbrate.cli;

import picocli.CommandLine.IVersionProvider;

/** Tells the version that the build wrote into the program. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Adumbrate.class.getPackage().getImplementationVersion();
        return new String[] {"adumbrate " + (version == null ? "(not packaged)" : version)};
    }
}
