/** A panel over the page: Escape or a press beside it closes, focus comes back to where it was. */
import type { ReactNode } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";

interface PanelProps {
  readonly title: string;
  readonly open: boolean;
  readonly onOpenChange: (open: boolean) => void;
  /** As wide as the page, for tables. Left out: for lists. */
  readonly wide?: boolean;
  readonly children: ReactNode;
}

export function Panel({ title, open, onOpenChange, wide = false, children }: PanelProps) {
  return (
    <ModalOverlay className="panel-ground" isDismissable isOpen={open} onOpenChange={onOpenChange}>
      <Modal className={wide ? "panel wide" : "panel"}>
        <Dialog className="panel-inside">
          <div className="panel-head">
            <Heading slot="title">{title}</Heading>
            <Button slot="close" className="button">
              Close
            </Button>
          </div>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
