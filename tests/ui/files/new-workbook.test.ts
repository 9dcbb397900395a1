/// <reference types="vite/client" />
import { expect, test } from 'vitest';
import { isHouseType } from '../../../src/lots/commands.ts';
import { loadTemplate, shippedTemplates } from '../../../src/ui/files/new-workbook.ts';

test.each(shippedTemplates.map((template) => [template.name, template] as const))(
  '%s is offered to a lot table only when it is a house type',
  async (name, template) => {
    const { workbook } = await loadTemplate(template);
    expect(template.isHouseType ?? false).toBe(isHouseType(workbook));
    expect(workbook.title).toBe(name);
  },
);
