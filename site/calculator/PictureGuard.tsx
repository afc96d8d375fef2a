import { Component, options, type ComponentChildren } from 'preact';

interface Props {
  readonly children: ComponentChildren;
}

/** What the server's renderer reads and its types leave out: it lets a component catch as a browser does. */
const server: typeof options & { errorBoundaries?: boolean } = options;
server.errorBoundaries = true;

/** A picture that cannot be drawn leaves the figures and the address as they are, and is tried anew with the next. */
export class PictureGuard extends Component<Props, { readonly failed?: ComponentChildren }> {
  override componentDidCatch(error: unknown): void {
    // eslint-disable-next-line no-console -- whoever looks for the reason finds it there, on the server too
    console.error(error);
    this.setState({ failed: this.props.children });
  }
  override render({ children }: Props) {
    return this.state.failed === children && children !== undefined ? (
      <p class="no-picture">
        This picture cannot be drawn for these figures: the figures above stand.
      </p>
    ) : (
      children
    );
  }
}
