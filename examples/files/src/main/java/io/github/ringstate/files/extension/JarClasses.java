package io.github.ringstate.files.extension;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLConnection;
import java.net.URLStreamHandler;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import org.jspecify.annotations.Nullable;

/** The classes and resources of a jar that is held in memory. */
final class JarClasses extends ClassLoader {

  private final Map<String, byte[]> entries = new HashMap<>();

  /**
   * Reads a jar.
   *
   * @throws IOException if the bytes are no jar
   */
  JarClasses(byte[] jar, ClassLoader parent) throws IOException {
    super(parent);
    try (JarInputStream in = new JarInputStream(new ByteArrayInputStream(jar))) {
      for (JarEntry entry = in.getNextJarEntry(); entry != null; entry = in.getNextJarEntry()) {
        entries.put(entry.getName(), in.readAllBytes());
      }
    }
  }

  /** Whether nothing is in it, as when the bytes were no jar. */
  boolean isEmpty() {
    return entries.isEmpty();
  }

  boolean has(String name) {
    return entries.containsKey(name);
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    byte[] bytes = entries.get(name.replace('.', '/') + ".class");
    if (bytes == null) {
      throw new ClassNotFoundException(name);
    }
    return defineClass(name, bytes, 0, bytes.length);
  }

  @Override
  protected @Nullable URL findResource(String name) {
    byte[] bytes = entries.get(name);
    if (bytes == null) {
      return null;
    }
    try {
      return new URL("extension", "", 0, "/" + name, new InMemory(bytes));
    } catch (MalformedURLException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  @Override
  protected Enumeration<URL> findResources(String name) {
    URL found = findResource(name);
    return Collections.enumeration(found == null ? List.of() : List.of(found));
  }

  private static final class InMemory extends URLStreamHandler {

    private final byte[] bytes;

    InMemory(byte[] bytes) {
      this.bytes = bytes;
    }

    @Override
    protected URLConnection openConnection(URL url) {
      return new URLConnection(url) {
        @Override
        public void connect() {}

        @Override
        public InputStream getInputStream() {
          return new ByteArrayInputStream(bytes);
        }
      };
    }
  }
}
