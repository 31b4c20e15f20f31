import {
  AmbientLight,
  BackSide,
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  DoubleSide,
  EdgesGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  MOUSE,
  OrthographicCamera,
  Plane,
  PlaneGeometry,
  Scene,
  SRGBColorSpace,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { creasedNormals } from '../../src/output/mesh/creased-normals.js';
import type { PageBody, PageData } from '../../src/output/page/page-data.js';
import { meshOf } from './data.js';

const EDGE_DEGREES = 32;
const TURN_STEP = Math.PI / 24;
const ZOOM_STEP = 1.25;
const MARGIN = 1.08;
/** Squares of the bed [mm]. */
const BED_SQUARE = 10;

/** How a section lies. */
export type Cut = 'none' | 'along' | 'across';

/** A body on the stage, with what changes when it is cut or moved. */
interface Staged {
  readonly group: Group;
  readonly body: PageBody;
  readonly inside?: Mesh;
}

/** The part in three dimensions. Pictures are drawn only when something changes. */
export class Viewer {
  readonly #data: PageData;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #part = new Group();
  readonly #camera = new OrthographicCamera(-1, 1, 1, -1, -2000, 2000);
  readonly #controls: OrbitControls;
  readonly #plane = new Plane(new Vector3(0, 0, -1), 0);
  readonly #bodies: Staged[];
  readonly #companions: Staged[];
  readonly #bed = new Group();
  readonly #stage: HTMLElement;
  #waiting = false;
  #half = 1;

  /** @throws Error where the browser has no WebGL */
  constructor(stage: HTMLElement, data: PageData) {
    this.#stage = stage;
    this.#data = data;
    this.#renderer = new WebGLRenderer({ antialias: true, alpha: true, preserveDrawingBuffer: true });
    this.#renderer.localClippingEnabled = true;
    this.#renderer.setPixelRatio(Math.min(2, window.devicePixelRatio));
    this.#bodies = data.bodies.map((body) => this.#stageBody(body, 1));
    this.#companions = data.companions.map((body) => this.#stageBody(body, data.opacity));
    for (const { group } of [...this.#bodies, ...this.#companions]) this.#part.add(group);
    this.#scene.add(this.#part, this.#bed, ...lights(this.#camera), this.#camera);
    this.#bed.visible = false;
    const canvas = this.#renderer.domElement;
    canvas.tabIndex = 0;
    canvas.setAttribute('role', 'application');
    canvas.setAttribute('aria-roledescription', 'turnable model');
    canvas.setAttribute('aria-label', 'The part in 3D. Arrow keys turn it, plus and minus zoom, Home resets the view.');
    this.#controls = new OrbitControls(this.#camera, canvas);
    this.#controls.enableDamping = false;
    this.#controls.mouseButtons = { LEFT: MOUSE.ROTATE, MIDDLE: MOUSE.DOLLY, RIGHT: MOUSE.PAN };
    // the wheel scrolls the page until the model was taken in hand
    this.#controls.enableZoom = false;
    canvas.addEventListener('focus', () => {
      this.#controls.enableZoom = true;
    });
    canvas.addEventListener('blur', () => {
      this.#controls.enableZoom = false;
    });
    canvas.addEventListener('keydown', (event) => this.#onKey(event));
    this.#controls.addEventListener('change', () => this.draw());
    new ResizeObserver(() => this.#resize()).observe(stage);
    stage.append(canvas);
    this.reset();
    this.#resize();
  }

  /** Turns to the first view and fits the part. */
  reset(): void {
    this.look(this.#data.azimuth, this.#data.elevation);
  }

  /** Looks from a place on the sphere, degrees, and fits what is shown. */
  look(azimuth: number, elevation: number): void {
    const [a, e] = [(azimuth * Math.PI) / 180, (elevation * Math.PI) / 180];
    const { middle } = this.#reach();
    this.#camera.up.set(0, 0, 1);
    this.#controls.target.copy(middle);
    this.#camera.position
      .set(Math.cos(e) * Math.cos(a), Math.cos(e) * Math.sin(a), Math.sin(e))
      .multiplyScalar(500)
      .add(middle);
    this.#camera.zoom = 1;
    this.#controls.update();
    this.#fit();
  }

  /** Cuts the bodies open; `at` runs from −1 to 1 over the part. */
  cut(how: Cut, at: number): void {
    const towards = (this.#data.cutTowards * Math.PI) / 180;
    const { radius, low, high } = this.#reach();
    if (how === 'across') this.#plane.setComponents(0, 0, -1, low + ((at + 1) / 2) * (high - low));
    // keeps what lies behind the plane as seen by the viewer of the first picture
    else this.#plane.setComponents(-Math.sin(towards), Math.cos(towards), 0, at * radius);
    const planes = how === 'none' ? null : [this.#plane];
    for (const { group, inside } of this.#bodies) {
      if (inside) inside.visible = planes !== null;
      group.traverse((thing) => {
        if (thing instanceof Mesh || thing instanceof LineSegments) setPlanes(thing.material, planes);
      });
    }
    this.draw();
  }

  /** Pulls the bodies apart by a share of their full shifts. */
  pull(share: number): void {
    for (const { group, body } of this.#bodies) group.position.set(...body.apart).multiplyScalar(share);
    this.#refit();
  }

  showCompanions(shown: boolean): void {
    for (const { group } of this.#companions) group.visible = shown;
    this.#refit();
  }

  /** Lays the part on the bed as it is printed, or puts it back. */
  layOnBed(lying: boolean): void {
    const over = lying && this.#data.turnedOver;
    this.#part.rotation.set(over ? Math.PI : 0, 0, 0);
    this.#part.position.set(0, 0, 0);
    this.#bed.clear();
    this.#bed.visible = lying;
    if (lying) {
      const { low, radius } = this.#reach();
      this.#part.position.z = -low;
      this.#bed.add(...bedLines(radius));
    }
    this.#refit();
  }

  zoom(factor: number): void {
    this.#camera.zoom = Math.min(20, Math.max(0.4, this.#camera.zoom * factor));
    this.#camera.updateProjectionMatrix();
    this.draw();
  }

  /** Draws once, however many ask before the next frame. */
  draw(): void {
    if (this.#waiting) return;
    this.#waiting = true;
    requestAnimationFrame(() => {
      this.#waiting = false;
      this.#renderer.render(this.#scene, this.#camera);
      this.#stage.dataset.drawn = String(Number(this.#stage.dataset.drawn ?? 0) + 1);
    });
  }

  #onKey(event: KeyboardEvent): void {
    const turns: Record<string, readonly [number, number]> = {
      ArrowLeft: [-TURN_STEP, 0],
      ArrowRight: [TURN_STEP, 0],
      ArrowUp: [0, -TURN_STEP],
      ArrowDown: [0, TURN_STEP],
    };
    const turn = turns[event.key];
    if (turn) this.#turn(...turn);
    else if (event.key === '+' || event.key === '=') this.zoom(ZOOM_STEP);
    else if (event.key === '-') this.zoom(1 / ZOOM_STEP);
    else if (event.key === 'Home') this.reset();
    else return;
    event.preventDefault();
  }

  #turn(around: number, over: number): void {
    const { target } = this.#controls;
    const from = this.#camera.position.clone().sub(target);
    const distance = from.length();
    const azimuth = Math.atan2(from.y, from.x) + around;
    const tilt = Math.min(Math.PI - 0.01, Math.max(0.01, Math.acos(from.z / distance) + over));
    this.#camera.position
      .set(Math.sin(tilt) * Math.cos(azimuth), Math.sin(tilt) * Math.sin(azimuth), Math.cos(tilt))
      .multiplyScalar(distance)
      .add(target);
    this.#controls.update();
    this.draw();
  }

  #stageBody(body: PageBody, opacity: number): Staged {
    const mesh = meshOf(body);
    const group = new Group();
    const surface = new BufferGeometry();
    surface.setAttribute('position', new BufferAttribute(cornersOf(mesh.positions, mesh.triangles), 3));
    surface.setAttribute('normal', new BufferAttribute(creasedNormals(mesh), 3));
    const glass = opacity < 1;
    const paint = new MeshLambertMaterial({ color: colourOf(body.colour), transparent: glass, opacity });
    const outside = new Mesh(surface, paint);
    outside.renderOrder = glass ? 1 : 0;
    group.add(outside);
    if (glass) {
      // only what lies nearest is to be seen, so its depth is laid down first
      const nearest = new Mesh(surface, new MeshBasicMaterial({ colorWrite: false }));
      nearest.renderOrder = 0.5;
      group.add(nearest);
      return { group, body };
    }
    const inside = new Mesh(surface, hatched(body.cutColour));
    inside.visible = false;
    const joined = new BufferGeometry();
    joined.setAttribute('position', new BufferAttribute(Float32Array.from(mesh.positions), 3));
    joined.setIndex(new BufferAttribute(mesh.triangles, 1));
    const ink = new LineBasicMaterial({ color: 0x17242b, transparent: true, opacity: 0.42 });
    group.add(inside, new LineSegments(new EdgesGeometry(joined, EDGE_DEGREES), ink));
    return { group, body, inside };
  }

  /** What is shown: how high, how wide, and its middle. */
  #reach() {
    let [low, high, radius] = [Infinity, -Infinity, 0];
    this.#eachCorner(({ x, y, z }) => {
      low = Math.min(low, z);
      high = Math.max(high, z);
      radius = Math.max(radius, Math.hypot(x, y));
    });
    return { low, high, radius, middle: new Vector3(0, 0, (low + high) / 2) };
  }

  /** Every corner of what is shown, where it stands now. */
  #eachCorner(visit: (corner: Vector3) => void): void {
    this.#part.updateMatrixWorld(true);
    const corner = new Vector3();
    for (const { group } of [...this.#bodies, ...this.#companions]) {
      const surface = group.children[0];
      if (!group.visible || !(surface instanceof Mesh)) continue;
      const places = surface.geometry.getAttribute('position');
      for (let i = 0; i < places.count; i++) {
        visit(corner.fromBufferAttribute(places, i).applyMatrix4(surface.matrixWorld));
      }
    }
  }

  /** Fits again without turning. */
  #refit(): void {
    const { middle } = this.#reach();
    const move = middle.sub(this.#controls.target);
    this.#controls.target.add(move);
    this.#camera.position.add(move);
    this.#controls.update();
    this.#fit();
  }

  /** The half-height of the picture that holds all that is shown, as it stands now. */
  #fit(): void {
    const { clientWidth: width, clientHeight: height } = this.#stage;
    const [right, up, back] = [new Vector3(), new Vector3(), new Vector3()];
    this.#camera.updateMatrixWorld();
    this.#camera.matrixWorld.extractBasis(right, up, back);
    let [across, over] = [1, 1];
    this.#eachCorner((corner) => {
      corner.sub(this.#controls.target);
      across = Math.max(across, Math.abs(corner.dot(right)));
      over = Math.max(over, Math.abs(corner.dot(up)));
    });
    const [wide, tall] = spread(width, height);
    this.#half = MARGIN * Math.max(across / wide, over / tall);
    this.#resize();
  }

  #resize(): void {
    const { clientWidth: width, clientHeight: height } = this.#stage;
    if (width === 0 || height === 0) return;
    this.#renderer.setSize(width, height);
    const [wide, tall] = spread(width, height);
    Object.assign(this.#camera, {
      left: -this.#half * wide,
      right: this.#half * wide,
      top: this.#half * tall,
      bottom: -this.#half * tall,
    });
    this.#camera.updateProjectionMatrix();
    this.draw();
  }
}

/** Width and height of the stage over the smaller of both. */
function spread(width: number, height: number): [number, number] {
  const least = Math.min(width, height) || 1;
  return [width / least || 1, height / least || 1];
}

function setPlanes(material: Material | Material[], planes: Plane[] | null): void {
  for (const one of [material].flat()) one.clippingPlanes = planes;
}

/** Three corners of its own for each facet, so that each can have its own normal. */
function cornersOf(positions: Float64Array, triangles: Uint32Array): Float32Array {
  const corners = new Float32Array(3 * triangles.length);
  for (let i = 0; i < triangles.length; i++) {
    for (let axis = 0; axis < 3; axis++) corners[3 * i + axis] = positions[3 * triangles[i]! + axis]!;
  }
  return corners;
}

/** The inside of an opened body, met first where the plane cuts it: flat, with the lines of a hatched section. */
function hatched(colour: PageBody['colour']): MeshBasicMaterial {
  const material = new MeshBasicMaterial({ color: colourOf(colour), side: BackSide });
  material.onBeforeCompile = (shader) => {
    shader.fragmentShader = shader.fragmentShader.replace(
      '#include <color_fragment>',
      '#include <color_fragment>\nif (mod(gl_FragCoord.x - gl_FragCoord.y, 9.0) < 1.4) diffuseColor.rgb *= 0.6;',
    );
  };
  return material;
}

function colourOf([r, g, b]: PageBody['colour']): Color {
  return new Color().setRGB(r / 255, g / 255, b / 255, SRGBColorSpace);
}

/** Two lights that go with the viewer. */
function lights(camera: OrthographicCamera): AmbientLight[] {
  const key = new DirectionalLight(0xffffff, 1.9);
  key.position.set(-0.45, 0.65, 0.75);
  const fill = new DirectionalLight(0xffffff, 0.7);
  fill.position.set(0.8, -0.1, 0.45);
  camera.add(key, fill);
  return [new AmbientLight(0xffffff, 1.15)];
}

/** A bed of squares under the part. */
function bedLines(radius: number): (LineSegments | Mesh)[] {
  const half = BED_SQUARE * Math.ceil((1.4 * radius) / BED_SQUARE);
  const points: number[] = [];
  for (let at = -half; at <= half; at += BED_SQUARE) points.push(at, -half, 0, at, half, 0, -half, at, 0, half, at, 0);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(points), 3));
  const plate = new Mesh(
    new PlaneGeometry(2 * half, 2 * half),
    new MeshBasicMaterial({ color: 0x8a979c, transparent: true, opacity: 0.16, side: DoubleSide, depthWrite: false }),
  );
  plate.position.z = -0.05;
  return [
    new LineSegments(geometry, new LineBasicMaterial({ color: 0x6f7f86, transparent: true, opacity: 0.5 })),
    plate,
  ];
}
