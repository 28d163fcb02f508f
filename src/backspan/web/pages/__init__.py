"""The pages, one subject a file: each fills a template from the workbench, or says an entry."""
