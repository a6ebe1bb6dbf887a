package org.barsheet.photographs;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.FileImageOutputStream;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/**
 * A camera on a copy stand: photographs a {@link PaperScene} with the lens's shading, blur, noise
 * and JPEG. The camera, the light, the flap and what lies about can be wrong. Nothing here is taken
 * from what is tested but the plan's numbers.
 */
public final class CopyStand {

  /** Everything that can be wrong with one photograph. */
  public static final class Shot {
    double amount;
    public double across;
    public double down;
    double turn;
    double scale = 1;
    public double light = 1;
    double redder = 1;
    double blur;
    Optional<Thing> thing = Optional.empty();
    double spill;
    double dark;

    public Shot(double amount) {
      this.amount = amount;
    }
  }

  /**
   * Something that lies, or throws its shadow, where it should not: in pixels of the photograph.
   */
  record Thing(Kind kind, double x, double y, double size, double angle) {
    enum Kind {
      HAND,
      THREAD,
      SHADOW
    }
  }

  /**
   * How a flap moves.
   *
   * @param hinge "left", "right", "top", "bottom", or "" where it slides
   * @param slides "left", "right", "top", "bottom", or "" where it turns
   */
  record Flap(String hinge, String slides) {}

  private final int width;
  private final int height;
  private final PaperScene scene;
  private final boolean otherStyle;
  private final double quality;
  private final double noise;
  private final SplittableRandom random;

  /**
   * A stand.
   *
   * @param hole left, top, right, bottom in pixels
   * @param distance from the lens to the paper in millimeters
   * @param backing linear red, green, blue
   */
  CopyStand(
      int width,
      int height,
      double[] hole,
      Flap flap,
      double millimetersPerPixel,
      double distance,
      boolean otherStyle,
      double[] backing,
      long seed) {
    this.width = width;
    this.height = height;
    this.otherStyle = otherStyle;
    Paper table = new Paper(width, height, otherStyle, seed);
    Paper piece = new Paper(width / 2, height, otherStyle, seed + 1);
    this.scene =
        new PaperScene(
            width, height, hole, flap, millimetersPerPixel, distance, table, piece, backing);
    this.quality = otherStyle ? 0.88 : 0.94;
    this.noise = otherStyle ? 0.011 : 0.006;
    this.random = new SplittableRandom(seed + 2);
  }

  /** A stand for what a plan asks for, framed to the pixel. */
  public static CopyStand of(PlannedSequence.Moving moving, int width, int height, long seed) {
    Rect view = moving.view().orElseThrow();
    double pixels = width / view.width();
    Rect rect = moving.opening().rect();
    double left = (rect.left() - view.left()) * pixels;
    double top = (rect.top() - view.top()) * pixels;
    double[] hole = {left, top, left + rect.width() * pixels, top + rect.height() * pixels};
    Opening.Motion motion = moving.opening().motion();
    Flap flap =
        motion instanceof Opening.Hinged hinged
            ? new Flap(word(hinged.hinge()), "")
            : new Flap("", word(((Opening.Slides) motion).toward()));
    return new CopyStand(
        width,
        height,
        hole,
        flap,
        moving.squareMillimeters() / pixels,
        moving.distanceMillimeters(),
        false,
        new double[] {0.02, 0.34, 0.05},
        seed);
  }

  private static String word(Opening.Side side) {
    return side.name().toLowerCase(Locale.ROOT);
  }

  /** Takes a photograph into a JPEG file. */
  public void take(Shot shot, Path file) throws IOException {
    write(render(shot), file, quality);
  }

  static void write(BufferedImage image, Path file, double quality) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (FileImageOutputStream out = new FileImageOutputStream(file.toFile())) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality((float) quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
  }

  BufferedImage render(Shot shot) {
    float[] light = new float[3 * width * height];
    double[] color = new double[3];
    double cos = Math.cos(Math.toRadians(shot.turn)) / shot.scale;
    double sin = Math.sin(Math.toRadians(shot.turn)) / shot.scale;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        Arrays.fill(color, 0);
        for (int part = 0; part < 4; part++) {
          double u = x + 0.25 + 0.5 * (part % 2) - width / 2.0 - shot.across;
          double v = y + 0.25 + 0.5 * (part >> 1) - height / 2.0 - shot.down;
          scene.ray(shot, cos * u + sin * v, cos * v - sin * u, color);
        }
        double rim =
            Math.hypot(x - width / 2.0, y - height / 2.0) / Math.hypot(width / 2.0, height / 2.0);
        double shade = shot.light * (1 - (otherStyle ? 0.28 : 0.16) * rim * rim);
        int at = 3 * (y * width + x);
        light[at] = (float) (shade * shot.redder * color[0]);
        light[at + 1] = (float) (shade * color[1]);
        light[at + 2] = (float) (shade * color[2]);
      }
    }
    if (shot.blur > 0) {
      blur(light, shot.blur);
    }
    return developed(light);
  }

  /** What the camera looks at. */
  PaperScene scene() {
    return scene;
  }

  private BufferedImage developed(float[] light) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int rgb = 0;
        for (int band = 0; band < 3; band++) {
          double value = light[3 * (y * width + x) + band];
          double grain = noise * Math.sqrt(0.04 + value) * gauss();
          rgb = rgb << 8 | level(value + grain);
        }
        image.setRGB(x, y, rgb);
      }
    }
    return image;
  }

  /** The sum of twelve even numbers, near enough to normal. */
  private double gauss() {
    long bits = random.nextLong();
    long more = random.nextLong();
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      sum += ((bits >>> (10 * i)) & 1023) + ((more >>> (10 * i)) & 1023);
    }
    return sum / 1023 - 6;
  }

  private static int level(double linear) {
    double share = Math.max(0, Math.min(1, linear));
    double encoded = share <= 0.0031308 ? 12.92 * share : 1.055 * Math.pow(share, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * encoded);
  }

  private void blur(float[] light, double radius) {
    int reach = (int) Math.ceil(radius);
    float[] copy = light.clone();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        for (int band = 0; band < 3; band++) {
          float sum = 0;
          int count = 0;
          for (int down = -reach; down <= reach; down++) {
            for (int across = -reach; across <= reach; across++) {
              int column = Math.max(0, Math.min(width - 1, x + across));
              int row = Math.max(0, Math.min(height - 1, y + down));
              sum += copy[3 * (row * width + column) + band];
              count++;
            }
          }
          light[3 * (y * width + x) + band] = sum / count;
        }
      }
    }
  }
}
