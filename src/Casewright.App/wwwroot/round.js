// The casework in three dimensions: orbit, section, parts drawn apart, colours, selection.
import * as THREE from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';

const wood = { Back: 0xf1ead9, BaseRail: 0xddcfaf, BaseRung: 0xddcfaf, ToeFace: 0xddcfaf, Nosing: 0xcdb78a, Crown: 0xcdb78a, TrimBand: 0xcdb78a, Stile: 0xcdb78a, Rail: 0xcdb78a, Counter: 0xcdb78a, Door: 0xf3ecdb, DrawerFront: 0xf3ecdb };
const palette = [0x7fa7c4, 0xd9b26f, 0x9bb58a, 0xc98f7b, 0xa99bc0, 0xd8c98f, 0x86b5ae, 0xc9a0ae, 0xb7b7a0, 0x9fb0d0];

// A part cut on a slant: its outline seen from the front, as deep as its box, about the middle of the box.
function extruded(outline, min, max) {
  const middle = min.clone().add(max).multiplyScalar(0.5);
  const shape = new THREE.Shape(outline.map(([x, y]) => new THREE.Vector2(x - middle.x, y - middle.y)));
  const geometry = new THREE.ExtrudeGeometry(shape, { depth: max.z - min.z, bevelEnabled: false });
  return geometry.translate(0, 0, min.z - middle.z);
}

export function show(canvas, page) {
  let renderer;
  try {
    renderer = new THREE.WebGLRenderer({ canvas, antialias: true });
  } catch {
    const note = document.createElement('p');
    note.textContent = 'This browser cannot draw in three dimensions. Everything is on the elevation too.';
    canvas.replaceWith(note);
    return { parts() {}, set() {}, select() {}, dispose() {} };
  }
  renderer.localClippingEnabled = true;
  const scene = new THREE.Scene();
  const camera = new THREE.PerspectiveCamera(38, 1, 10, 200000);
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = false;
  scene.add(new THREE.HemisphereLight(0xffffff, 0xb8ad97, 2.4));
  const sun = new THREE.DirectionalLight(0xffffff, 1.5);
  scene.add(sun);
  const clip = new THREE.Plane(new THREE.Vector3(0, 0, -1), 1e6);
  let group = new THREE.Group();
  scene.add(group);
  let boxes = [];
  let bounds = new THREE.Box3();
  let framed = false;
  let state = { apart: 0, section: 1, colour: 'wood', axis: 'z', selected: null };

  const draw = () => renderer.render(scene, camera);
  const theme = () => {
    const ground = getComputedStyle(document.documentElement).getPropertyValue('--ground').trim() || '#F5F2EA';
    scene.background = new THREE.Color(ground);
  };
  const size = () => {
    const { clientWidth: w, clientHeight: h } = canvas;
    if (!w || !h) return;
    renderer.setPixelRatio(Math.min(2, window.devicePixelRatio));
    renderer.setSize(w, h, false);
    camera.aspect = w / h;
    camera.updateProjectionMatrix();
    if (!framed && boxes.length) frame();
    draw();
  };
  const frame = () => {
    const centre = bounds.getCenter(new THREE.Vector3());
    const span = bounds.getSize(new THREE.Vector3());
    const fit = Math.max(span.y, span.x / camera.aspect) / (2 * Math.tan((camera.fov * Math.PI) / 360));
    camera.position.set(centre.x + fit * 0.55, centre.y + fit * 0.25, bounds.max.z + fit * 1.15);
    controls.target.copy(centre);
    controls.update();
    sun.position.set(centre.x - fit, centre.y + fit * 1.5, centre.z + fit * 2);
    framed = true;
  };
  const colourOf = (box, order) => {
    if (state.colour === 'wood') return wood[box.role] ?? 0xe9dfc8;
    const key = state.colour === 'case' ? box.owner : box.sheet;
    return palette[(order.get(key) ?? 0) % palette.length];
  };
  const isChosen = (box) => state.selected && (box.id === state.selected || box.owner === state.selected);
  const paint = () => {
    const order = new Map();
    for (const box of boxes) {
      const key = state.colour === 'case' ? box.owner : box.sheet;
      if (!order.has(key)) order.set(key, order.size);
    }
    const middle = bounds.getCenter(new THREE.Vector3());
    for (const mesh of group.children) {
      const box = mesh.userData.box;
      const own = mesh.userData.centre;
      mesh.material.color.setHex(isChosen(box) ? 0x17557f : colourOf(box, order));
      mesh.position.copy(own).add(own.clone().sub(middle).multiplyScalar(state.apart * 0.6));
    }
    const span = bounds.max[state.axis] - bounds.min[state.axis];
    clip.normal.set(0, 0, 0)[state.axis] = -1;
    clip.constant = state.section >= 1 ? 1e6 : bounds.min[state.axis] + span * Math.max(0.02, state.section);
    draw();
  };

  controls.addEventListener('change', draw);
  new ResizeObserver(size).observe(canvas);
  const dark = window.matchMedia('(prefers-color-scheme: dark)');
  const repaint = () => { theme(); draw(); };
  dark.addEventListener('change', repaint);
  const observer = new MutationObserver(repaint);
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });

  let down = null;
  canvas.addEventListener('pointerdown', (e) => { down = { x: e.clientX, y: e.clientY }; });
  canvas.addEventListener('pointerup', (e) => {
    if (!down || Math.hypot(e.clientX - down.x, e.clientY - down.y) > 4) return;
    const area = canvas.getBoundingClientRect();
    const ray = new THREE.Raycaster();
    ray.setFromCamera(new THREE.Vector2(((e.clientX - area.left) / area.width) * 2 - 1, 1 - ((e.clientY - area.top) / area.height) * 2), camera);
    const hit = ray.intersectObjects(group.children, false).find((h) => clip.distanceToPoint(h.point) >= 0);
    page.invokeMethodAsync('Clicked', hit ? hit.object.userData.box.id : null);
  });
  canvas.addEventListener('keydown', (e) => {
    const turn = { ArrowLeft: [-0.12, 0], ArrowRight: [0.12, 0], ArrowUp: [0, -0.1], ArrowDown: [0, 0.1] }[e.key];
    const offset = camera.position.clone().sub(controls.target);
    if (turn) {
      const s = new THREE.Spherical().setFromVector3(offset);
      s.theta += turn[0];
      s.phi = Math.min(Math.PI - 0.05, Math.max(0.05, s.phi + turn[1]));
      offset.setFromSpherical(s);
    } else if (e.key === '+' || e.key === '-') {
      offset.multiplyScalar(e.key === '+' ? 0.9 : 1.1);
    } else return;
    e.preventDefault();
    camera.position.copy(controls.target).add(offset);
    controls.update();
    draw();
  });

  theme();
  return {
    parts(list) {
      scene.remove(group);
      for (const mesh of group.children) { mesh.geometry.dispose(); mesh.material.dispose(); mesh.children.forEach((c) => { c.geometry.dispose(); }); }
      group = new THREE.Group();
      boxes = list;
      bounds = new THREE.Box3();
      const edges = new THREE.LineBasicMaterial({ color: 0x1d272c, clippingPlanes: [clip] });
      for (const box of list) {
        const min = new THREE.Vector3(...box.min);
        const max = new THREE.Vector3(...box.max);
        bounds.expandByPoint(min).expandByPoint(max);
        const span = max.clone().sub(min);
        const geometry = box.outline ? extruded(box.outline, min, max) : new THREE.BoxGeometry(span.x, span.y, span.z);
        const material = new THREE.MeshLambertMaterial({ clippingPlanes: [clip], side: THREE.DoubleSide, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
        const mesh = new THREE.Mesh(geometry, material);
        mesh.userData = { box, centre: min.clone().add(max).multiplyScalar(0.5) };
        mesh.position.copy(mesh.userData.centre);
        mesh.add(new THREE.LineSegments(new THREE.EdgesGeometry(geometry), edges));
        group.add(mesh);
      }
      scene.add(group);
      size();
      paint();
      canvas.dataset.parts = list.length;
    },
    set(apart, section, colour, axis) { state = { ...state, apart, section, colour, axis }; paint(); },
    select(id) { state = { ...state, selected: id }; paint(); },
    dispose() { observer.disconnect(); controls.dispose(); renderer.dispose(); },
  };
}
