//! One photo's light: each pixel's mean radiance over its own area, by its own
//! distorted rays.
//!
//! Rays go through the pixels' corners, shared by neighbours. Where a pixel's
//! four corners agree, their mean is its light. Where all four fall on one
//! printed marker, the share of black under the pixel is computed exactly.
//! Everywhere else the pixel is sampled with many rays.

use std::ops::Range;

use nalgebra::Vector3;
use rayon::prelude::*;

use super::colour::Colour;
use super::facet::{Hit, Ray};
use super::light::{Lighting, spread};
use super::model::Model;
use super::near::{Near, TILE};
use super::rays::Rays;
use crate::synth::view::View;

/// Rays per pixel where something changes: on a silhouette before a printed
/// marker, and elsewhere.
const FINE: usize = 64;
const COARSE: usize = 16;
/// Relative difference of the corners above which a pixel is sampled.
const CALM: f32 = 0.06;
/// With more facets than this in a tile, the tree is quicker.
const LONG_LIST: usize = 12;
/// Step of the light grid, px.
const LIGHT_STEP: usize = 6;
/// Every so many nodes are computed first; those between only where these differ.
const SPARSE: usize = 4;
/// Side of the squares of a draft, px.
const DRAFT: usize = 8;
/// Relative difference of light that counts as none.
const EVEN: f32 = 0.025;

/// Linear light per pixel, row by row.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Light {
    /// Width in pixels.
    pub(crate) width: usize,
    /// Height in pixels.
    pub(crate) height: usize,
    /// Red, green, blue.
    pub(crate) rgb: Vec<[f32; 3]>,
}

/// What was computed at a node of the light grid.
#[derive(Debug, Clone, Copy)]
struct Node {
    body: u32,
    point: Vector3<f32>,
    normal: Vector3<f32>,
    light: [f32; 3],
}

/// Everything that one photo's rays need.
struct Shot<'a> {
    model: &'a Model,
    lighting: &'a Lighting,
    rays: Rays,
    columns: usize,
    nodes: Vec<Option<Node>>,
    /// Width of a pixel at depth one.
    pixel: f64,
    /// Where it is to be exact.
    near: Near,
}

/// What the rays of a tile can meet.
struct Tile {
    facets: Vec<u32>,
    short: bool,
}

/// What a ray through a pixel corner saw.
#[derive(Debug, Clone, Copy)]
struct Seen {
    facet: Option<u32>,
    surface: u32,
    body: u32,
    light: [f32; 3],
    colour: Colour,
}

const NOTHING: Seen = Seen { facet: None, surface: u32::MAX, body: u32::MAX, light: [0.0; 3], colour: [0.0; 3] };

/// Renders a view of a model: exactly where it is wanted, and as a draft elsewhere.
pub(crate) fn render(model: &Model, ambient: [f32; 3], view: &View, near: Near) -> Light {
    let lighting = Lighting::of(model, ambient);
    let [width, height] = view.size_px.map(|s| s as usize);
    let rays = Rays::of(view);
    let pixel = rays.pixel_width();
    let columns = (width / LIGHT_STEP + 2).next_multiple_of(SPARSE) + 1;
    let rows = (height / LIGHT_STEP + 2).next_multiple_of(SPARSE) + 1;
    let mut shot = Shot { model, lighting: &lighting, rays, columns, nodes: Vec::new(), pixel, near };
    shot.nodes = shot.sparse_nodes(rows);
    shot.nodes = (0..columns * rows).into_par_iter().map(|i| shot.full_node(i % columns, i / columns)).collect();
    let mut rgb = vec![[0.0f32; 3]; width * height];
    rgb.par_chunks_mut(TILE * width).enumerate().for_each(|(band, pixels)| {
        for run in shot.near.drafts(band) {
            shot.draft(band * TILE, run, pixels, width);
        }
        let tiles = shot.tiles(band, width);
        for run in shot.near.runs(band) {
            shot.exact(&tiles, band * TILE, run, pixels, width);
        }
    });
    Light { width, height, rgb }
}

impl Shot<'_> {
    /// The pixels of some columns of a band, each by its own rays.
    fn exact(&self, tiles: &[Tile], top: usize, columns: Range<usize>, pixels: &mut [Colour], width: usize) {
        let mut above = self.corners(tiles, top, columns.clone());
        for (row, line) in pixels.chunks_mut(width).enumerate() {
            let v = top + row;
            let below = self.corners(tiles, v + 1, columns.clone());
            for (i, u) in columns.clone().enumerate() {
                line[u] = self.pixel(&tiles[u / TILE], u, v, &[above[i], above[i + 1], below[i + 1], below[i]]);
            }
            above = below;
        }
    }

    /// The same columns in squares of one colour each, that of the ray through its middle.
    fn draft(&self, top: usize, columns: Range<usize>, pixels: &mut [Colour], width: usize) {
        let rows = pixels.len() / width;
        for row in (0..rows).step_by(DRAFT) {
            for left in columns.clone().step_by(DRAFT) {
                let (right, bottom) = ((left + DRAFT).min(columns.end), (row + DRAFT).min(rows));
                let middle = |from: usize, to: usize| 0.5 * (from + to - 1) as f64;
                let colour = self.glimpse(middle(left, right), middle(top + row, top + bottom));
                for line in pixels.chunks_mut(width).take(bottom).skip(row) {
                    line[left..right].fill(colour);
                }
            }
        }
    }

    /// What a ray sees, by the light of the sparse nodes about it.
    fn glimpse(&self, u: f64, v: f64) -> Colour {
        let ray = self.rays.at(u, v);
        let Some(hit) = self.model.nearest(&ray, None) else { return [0.0; 3] };
        let (point, normal) = self.place(&ray, &hit);
        let body = self.model.surface_of(&hit).body;
        let step = (LIGHT_STEP * SPARSE) as f64;
        let [i, j] = [u, v].map(|x| (x / step) as usize * SPARSE);
        let about = [(0, 0), (SPARSE, 0), (0, SPARSE), (SPARSE, SPARSE)];
        let same = about.iter().filter_map(|(di, dj)| {
            let node = self.nodes.get((j + dj) * self.columns + i + di).copied().flatten()?;
            (node.body == body && node.normal.dot(&normal.cast()) > 0.9).then_some(node.light)
        });
        let same: Vec<[f32; 3]> = same.collect();
        let light =
            if same.is_empty() { self.lighting.falls_on(self.model, &point, &normal) } else { mean(same.into_iter()) };
        self.radiance(&ray, &hit, &point, &normal, light)
    }

    /// The nodes at whole multiples of the sparse step; the others are empty.
    fn sparse_nodes(&self, rows: usize) -> Vec<Option<Node>> {
        let at = |i: usize| {
            let (column, row) = (i % self.columns, i / self.columns);
            let sparse = column % SPARSE == 0 && row % SPARSE == 0;
            if sparse { self.node(column, row, |p, n| self.lighting.falls_on(self.model, p, n)) } else { None }
        };
        (0..self.columns * rows).into_par_iter().map(at).collect()
    }

    /// A node's light from the four sparse ones about it where they agree.
    fn full_node(&self, column: usize, row: usize) -> Option<Node> {
        let (i, j) = (column / SPARSE * SPARSE, row / SPARSE * SPARSE);
        if (column, row) == (i, j) {
            return self.nodes[row * self.columns + column];
        }
        if !self.near.wants_about(column * LIGHT_STEP, row * LIGHT_STEP, LIGHT_STEP) {
            return None;
        }
        let (fu, fv) = ((column - i) as f32 / SPARSE as f32, (row - j) as f32 / SPARSE as f32);
        let about = [(0, 0), (SPARSE, 0), (0, SPARSE), (SPARSE, SPARSE)]
            .map(|(di, dj)| self.nodes.get((j + dj) * self.columns + i + di).copied().flatten());
        let weights = [(1.0 - fu) * (1.0 - fv), fu * (1.0 - fv), (1.0 - fu) * fv, fu * fv];
        self.node(column, row, |point, normal| {
            even_light(&about, &weights, point, normal)
                .unwrap_or_else(|| self.lighting.falls_on(self.model, point, normal))
        })
    }

    fn node(
        &self,
        column: usize,
        row: usize,
        light: impl Fn(&Vector3<f64>, &Vector3<f64>) -> [f32; 3],
    ) -> Option<Node> {
        let at = |i: usize| (i * LIGHT_STEP) as f64 - 0.5;
        let [width, height] = self.rays.size();
        let ray = self.rays.at(at(column).min(width), at(row).min(height));
        let hit = self.model.nearest(&ray, None)?;
        let (point, normal) = self.place(&ray, &hit);
        let light = light(&point, &normal);
        let body = self.model.surface_of(&hit).body;
        Some(Node { body, point: point.cast(), normal: normal.cast(), light })
    }

    /// Point and normal towards the viewer.
    fn place(&self, ray: &Ray, hit: &Hit) -> (Vector3<f64>, Vector3<f64>) {
        let facet = self.model.facet(hit);
        let flat = facet.flat;
        let flat = if flat.dot(&ray.direction) > 0.0 { -flat } else { flat };
        let curved = facet.shading_normal(hit.a, hit.b);
        (ray.at(hit.t), if curved.dot(&flat) < 0.0 { -curved } else { curved })
    }

    /// What the rays of each tile of a band can meet; empty where the tree is quicker.
    fn tiles(&self, band: usize, width: usize) -> Vec<Tile> {
        let top = (band * TILE) as f64 - 0.5;
        let tile = |i: usize| {
            let left = (i * TILE) as f64 - 0.5;
            let (eye, planes) = self.rays.pyramid([left, top], [left + TILE as f64, top + TILE as f64]);
            // A tile's last corner is its right neighbour's first.
            let wanted = self.near.wants(band, i) || (i > 0 && self.near.wants(band, i - 1));
            let facets = if wanted { self.model.within(&eye, &planes) } else { Vec::new() };
            Tile { short: facets.len() <= LONG_LIST, facets }
        };
        (0..=width / TILE).map(tile).collect()
    }

    fn corners(&self, tiles: &[Tile], v: usize, columns: Range<usize>) -> Vec<Seen> {
        let mut hint = None;
        let corner = |u: usize| {
            let seen = self.look(&tiles[u / TILE], u as f64 - 0.5, v as f64 - 0.5, hint);
            hint = seen.facet;
            seen
        };
        (columns.start..=columns.end).map(corner).collect()
    }

    fn look(&self, tile: &Tile, u: f64, v: f64, hint: Option<u32>) -> Seen {
        let ray = self.rays.at(u, v);
        let hit = match tile.short {
            true => self.model.nearest_of(&tile.facets, &ray),
            false => self.model.nearest(&ray, hint),
        };
        let Some(hit) = hit else { return NOTHING };
        let (point, normal) = self.place(&ray, &hit);
        let surface = self.model.surface_of(&hit);
        let light = self.light_at(u, v, surface.body, &point, &normal);
        let colour = self.radiance(&ray, &hit, &point, &normal, light);
        let facet = Some(hit.facet);
        Seen { facet, surface: self.model.surface_number(&hit), body: surface.body, light, colour }
    }

    /// Light from the grid where its nodes lie on the same surface, else computed.
    fn light_at(&self, u: f64, v: f64, body: u32, point: &Vector3<f64>, normal: &Vector3<f64>) -> [f32; 3] {
        let (gu, gv) = ((u + 0.5) / LIGHT_STEP as f64, (v + 0.5) / LIGHT_STEP as f64);
        let (i, j) = (gu.floor() as usize, gv.floor() as usize);
        let (fu, fv) = ((gu - i as f64) as f32, (gv - j as f64) as f32);
        let (point, direction) = (point.cast::<f32>(), normal.cast::<f32>());
        let mut sum = [0.0f32; 3];
        let mut total = 0.0f32;
        for (k, weight) in [(1.0 - fu) * (1.0 - fv), fu * (1.0 - fv), (1.0 - fu) * fv, fu * fv].into_iter().enumerate()
        {
            let Some(Some(node)) = self.nodes.get((j + k / 2) * self.columns + i + k % 2) else { continue };
            let same = node.body == body
                && node.normal.dot(&direction) > 0.95
                && (node.point - point).dot(&direction).abs() < 25.0;
            if same {
                let weight = weight + 1e-3;
                total += weight;
                for (s, l) in sum.iter_mut().zip(node.light) {
                    *s += weight * l;
                }
            }
        }
        match total > 0.02 {
            true => sum.map(|s| s / total),
            false => self.lighting.falls_on(self.model, &point.cast(), normal),
        }
    }

    fn radiance(&self, ray: &Ray, hit: &Hit, point: &Vector3<f64>, normal: &Vector3<f64>, light: [f32; 3]) -> Colour {
        let grain = self.pixel * hit.t;
        let look = self.model.surface_of(hit).look(point, normal, hit.a, hit.b, grain);
        if look.lamp {
            return look.colour;
        }
        let mut colour = [0, 1, 2].map(|i| look.colour[i] * light[i]);
        let view = ray.direction.normalize();
        if look.gloss.highlight > 0.0 {
            let shine = self.lighting.highlight(self.model, point, normal, &view, look.gloss.sharpness);
            // A point in shadow has no lamp to mirror: scale by the light that arrives.
            let open = (light[1] * 2.0).min(1.0) * look.gloss.highlight;
            colour = [0, 1, 2].map(|i| colour[i] + open * shine[i]);
        }
        if look.gloss.mirror > 0.0 {
            let cosine = (-view.dot(normal)).clamp(0.0, 1.0) as f32;
            let share = look.gloss.mirror + (1.0 - look.gloss.mirror) * (1.0 - cosine).powi(5) * 0.6;
            let mirrored = self.surroundings(point, normal, &view);
            colour = [0, 1, 2].map(|i| colour[i] + share * mirrored[i]);
        }
        colour
    }

    /// What a mirroring surface shows, with the light of an open place.
    fn surroundings(&self, point: &Vector3<f64>, normal: &Vector3<f64>, view: &Vector3<f64>) -> Colour {
        let direction = view - normal * (2.0 * view.dot(normal));
        let ray = Ray { origin: point + normal * 1.0, direction };
        let Some(hit) = self.model.nearest(&ray, None) else { return [0.0; 3] };
        let (there, facing) = self.place(&ray, &hit);
        let look = self.model.surface_of(&hit).look(&there, &facing, hit.a, hit.b, 20.0);
        if look.lamp { look.colour.map(|c| c.min(6.0)) } else { look.colour.map(|c| 0.6 * c) }
    }

    fn pixel(&self, tile: &Tile, u: usize, v: usize, corners: &[Seen; 4]) -> Colour {
        let first = &corners[0];
        let one_surface = corners.iter().all(|c| c.surface == first.surface);
        if one_surface
            && first.surface != u32::MAX
            && let Some(colour) = self.printed(u, v, corners)
        {
            return colour;
        }
        if one_surface && calm(corners) {
            return mean(corners.iter().map(|c| c.colour));
        }
        let marker = corners.iter().any(|c| self.model.is_sheet(c.surface));
        let many = if marker { FINE } else { COARSE };
        if !marker && corners.iter().all(|c| c.body == first.body) && calm(corners) {
            return mean(corners.iter().map(|c| c.colour));
        }
        mean((0..many).map(|i| {
            let [a, b] = spread(i, many);
            self.look(tile, u as f64 - 0.5 + a, v as f64 - 0.5 + b, first.facet).colour
        }))
    }

    /// The exact mean over a pixel that lies within one printed marker and its blank margin.
    fn printed(&self, u: usize, v: usize, corners: &[Seen; 4]) -> Option<Colour> {
        let (sheet, facet) = self.model.sheet(corners[0].surface)?;
        let mut polygon = [[0.0; 2]; 4];
        for (place, [du, dv]) in polygon.iter_mut().zip([[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0]]) {
            let ray = self.rays.at(u as f64 - 0.5 + du, v as f64 - 0.5 + dv);
            let (_, a, b) = facet.shape.meet(&ray)?;
            *place = sheet.position(a, b);
        }
        let reflectance = sheet.mean_colour(&polygon)?;
        let light = mean(corners.iter().map(|c| c.light));
        Some([0, 1, 2].map(|i| reflectance[i] * light[i]))
    }
}

/// Light between four nodes of one surface that are lit alike.
fn even_light(
    nodes: &[Option<Node>; 4],
    weights: &[f32; 4],
    point: &Vector3<f64>,
    normal: &Vector3<f64>,
) -> Option<[f32; 3]> {
    let (point, normal) = (point.cast::<f32>(), normal.cast::<f32>());
    let mut sum = [0.0f32; 3];
    let (mut low, mut high) = (f32::INFINITY, 0.0f32);
    let first = nodes[0]?;
    for (node, weight) in nodes.iter().zip(weights) {
        let node = (*node)?;
        let flat = (node.point - point).dot(&normal).abs() < 3.0;
        if node.body != first.body || node.normal.dot(&normal) < 0.999 || !flat {
            return None;
        }
        (low, high) = (low.min(node.light[1]), high.max(node.light[1]));
        for (s, l) in sum.iter_mut().zip(node.light) {
            *s += weight * l;
        }
    }
    (high - low <= EVEN * high).then_some(sum)
}

fn calm(corners: &[Seen; 4]) -> bool {
    let brightness = |c: &Seen| c.colour[0] + c.colour[1] + c.colour[2];
    let low = corners.iter().map(brightness).fold(f32::INFINITY, f32::min);
    let high = corners.iter().map(brightness).fold(f32::NEG_INFINITY, f32::max);
    high - low <= CALM * (high + low) * 0.5 + 1e-4
}

fn mean(colours: impl ExactSizeIterator<Item = [f32; 3]>) -> [f32; 3] {
    let n = colours.len() as f32;
    let mut sum = [0.0f32; 3];
    for colour in colours {
        for (s, c) in sum.iter_mut().zip(colour) {
            *s += c;
        }
    }
    sum.map(|s| s / n)
}
