package org.barsheet.sound;

import java.util.prefs.AbstractPreferences;
import java.util.prefs.Preferences;
import java.util.prefs.PreferencesFactory;

/**
 * Preferences that are empty and kept nowhere. The JDK's synthesizer looks for a person's own
 * settings of it, which would make a folder in their home and two persons' sound differ.
 */
public final class NoPreferences implements PreferencesFactory {

  /** Names the factory the JDK asks for preferences, once, before it first needs them. */
  static final String PROPERTY = "java.util.prefs.PreferencesFactory";

  private static final Preferences EMPTY = new Empty();

  @Override
  public Preferences systemRoot() {
    return EMPTY;
  }

  @Override
  public Preferences userRoot() {
    return EMPTY;
  }

  private static final class Empty extends AbstractPreferences {

    Empty() {
      super(null, "");
    }

    @Override
    protected void putSpi(String key, String value) {
      // kept nowhere
    }

    @Override
    protected String getSpi(String key) {
      return "";
    }

    @Override
    protected void removeSpi(String key) {
      // nothing is there
    }

    @Override
    protected void removeNodeSpi() {
      // nothing is there
    }

    @Override
    protected String[] keysSpi() {
      return new String[0];
    }

    @Override
    protected String[] childrenNamesSpi() {
      return new String[0];
    }

    @Override
    protected AbstractPreferences childSpi(String name) {
      return this;
    }

    @Override
    protected void syncSpi() {
      // nothing to keep
    }

    @Override
    protected void flushSpi() {
      // nothing to keep
    }
  }
}
