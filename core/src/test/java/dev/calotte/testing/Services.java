package dev.calotte.testing;

import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What a module offers to the module path and to the class path, as it was built. */
public record Services(Class<?> inModule) {

    /** Those that its service file names. */
    public List<String> inServiceFile(Class<?> service) throws IOException {
        try (InputStream file = own("META-INF/services/" + service.getName())) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    /** Those that its descriptor names. */
    public List<String> inDescriptor(Class<?> service) throws IOException {
        return descriptor().provides().stream()
                .filter(provided -> provided.service().equals(service.getName()))
                .flatMap(provided -> provided.providers().stream())
                .toList();
    }

    /** Its descriptor. */
    public ModuleDescriptor descriptor() throws IOException {
        try (InputStream descriptor = own("module-info.class")) {
            return ModuleDescriptor.read(descriptor);
        }
    }

    /** A file of the module, which is not the only one on the class path that has a file of that name. */
    private InputStream own(String file) throws IOException {
        String here = inModule.getName().replace('.', '/') + ".class";
        String place = inModule.getResource("/" + here).toString();
        return new URL(place.substring(0, place.length() - here.length()) + file).openStream();
    }
}
