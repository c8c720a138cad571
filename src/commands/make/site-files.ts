/** The site of a build, offering the prints and data files that lie beside it. */
import type { Content } from '../../domain/content.ts';
import { buildSite } from '../../site/build-site.ts';
import type { ChartViews } from '../../views/chart-views.ts';
import type { Part } from '../output/places.ts';

export interface SiteRequest {
  content: Content;
  charts: readonly ChartViews[];
  contentDir: string;
  /** Parts made in this build lie here, the others in the output folder. */
  stagingDir: string;
  outputDir: string;
  parts: readonly Part[];
}

/** Writes `site` in the staging folder. */
export async function siteFiles(request: SiteRequest): Promise<void> {
  await buildSite(request);
}
